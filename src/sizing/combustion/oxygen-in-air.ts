/** Share of oxygen in dry air. */
export const oxygenInAir = 0.209

import type { QuantityName } from '../model/index.js'

/** How each kind of amount is spoken of, and one as people write it. */
export const quantityWords: Readonly<Record<QuantityName, { readonly spoken: string; readonly example: string }>> = {
  length: { spoken: 'length', example: '18 in' },
  area: { spoken: 'area', example: '12.6 in2' },
  volume: { spoken: 'volume', example: '4.4 gal' },
  temperature: { spoken: 'temperature', example: '140 F' },
  temperatureDifference: { spoken: 'temperature difference', example: '20 F' },
  pressure: { spoken: 'pressure', example: '30 psi' },
  heatRate: { spoken: 'heat rate', example: '75000 Btu/h' },
  apparentPower: { spoken: 'apparent power', example: '40 VA' },
  volumeFlow: { spoken: 'flow', example: '7.4 gpm' },
  time: { spoken: 'time', example: '10 min' },
  fraction: { spoken: 'share', example: '35 %' },
  nominalSize: { spoken: 'nominal size', example: '1-1/4' },
  date: { spoken: 'date', example: '2025-09-03' },
  count: { spoken: 'count', example: '2' },
  slope: { spoken: 'slope', example: '1/4 in/ft' },
  energyPerVolume: { spoken: 'heating value', example: '1025 Btu/ft3' },
  mass: { spoken: 'mass', example: '20 lb' },
  voltage: { spoken: 'voltage', example: '24 V' },
  concentration: { spoken: 'concentration', example: '42 ppm' },
  current: { spoken: 'current', example: '0.5 A' },
}

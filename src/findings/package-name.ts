/** Name and version, printed with every report; a test holds it against package.json. */
export const packageName = 'hydronic-rulebook 0.1.0'

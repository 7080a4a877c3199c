import { fenceRow, readFences } from './fences.js'

const rows = (await readFences()).map(fenceRow)
console.log(['| fence | why |', '| --- | --- |', ...rows].join('\n'))

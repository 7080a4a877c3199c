export { writePages, type PageSources } from './write-pages.js'
export { conditionWords, valueWords } from './condition-words.js'

export { sizeInstallation, type SizeOptions } from './size-installation.js'
export {
  sizeTopics,
  type SizeHead,
  type SizeLine,
  type Sizes,
  type SizeTopic,
  type TopicSizes,
} from './checks/index.js'
export * from './sizing/index.js'
export * from './tables/index.js'

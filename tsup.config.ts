import { defineConfig } from 'tsup'

const doors = {
  index: 'src/index.ts',
  base: 'src/base.ts',
  'engine/index': 'src/engine/index.ts',
  'authoring/index': 'src/authoring/index.ts',
  'printing/index': 'src/printing/index.ts',
  'network/index': 'src/network/index.ts',
  sizing: 'src/sizing.ts',
  'node/index': 'src/node/index.ts',
}

// One build for all doors: built apart, each would carry its own copy of the rooms, and an error thrown through one
// door would be no `instanceof` the same class taken from another. `neutral` keeps Node out of every door but ./node.
export default defineConfig({
  entry: { ...doors, 'node/main': 'src/node/main.ts' },
  format: 'esm',
  dts: { entry: doors },
  platform: 'neutral',
  target: 'node20',
  external: [/^node:/],
  removeNodeProtocol: false,
  splitting: true,
  treeshake: true,
  sourcemap: false,
  clean: true,
})

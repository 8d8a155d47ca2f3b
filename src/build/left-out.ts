/**
 * Parts of the drawing library that the page never starts, but that the library would fetch by name if it were told to:
 * src/view/stage.ts asks for WebGL or the browser's own canvas alone and skips the extensions.
 */
import type { Plugin } from 'vite'

const parts: Record<string, string> = {
  'rendering/renderers/gpu/WebGPURenderer.mjs': 'export const WebGPURenderer = undefined',
  'environment-browser/browserAll.mjs': 'export {}',
  'environment-webworker/webworkerAll.mjs': 'export {}',
}

const found = new Set<string>()

export const leftOut: Plugin = {
  name: 'left-out',
  apply: 'build',
  enforce: 'pre',
  load: {
    filter: { id: /\/pixi\.js\/lib\// },
    handler(id) {
      const part = Object.keys(parts).find((path) => id.endsWith(`/pixi.js/lib/${path}`))
      if (part === undefined) return null
      found.add(part)
      return parts[part]
    },
  },
  buildEnd() {
    for (const part of Object.keys(parts)) {
      if (!found.has(part)) this.error(`The drawing library has no ${part} any more; see src/build/left-out.ts.`)
    }
  },
}

/** Long texts stand packed in the single file: deflated, as base64. */
import { fileURLToPath } from 'node:url'
import { deflateRawSync } from 'node:zlib'
import type { Plugin } from 'vite'
import { runnerImport } from 'vite'

const unpackModule = fileURLToPath(new URL('./unpack.ts', import.meta.url))

/** An import, and an expression that stands for the text where that import is. */
export function unpacking(text: string): { statement: string; expression: string } {
  const packed = deflateRawSync(text, { level: 9 }).toString('base64')
  return {
    statement: `import { unpack } from ${JSON.stringify(unpackModule)};\n`,
    expression: `unpack("${packed}")`,
  }
}

/** Lessons and other files that are read as text. */
export const textsPacked: Plugin = {
  name: 'texts-packed',
  enforce: 'post',
  transform: {
    filter: { id: /\?raw$/ },
    handler(code, id) {
      // The bundler writes: export default "...";
      const text = this.parse(code)
        .body.map((part) => (part.type === 'ExportDefaultDeclaration' ? part.declaration : null))
        .find((part) => part?.type === 'Literal')
      if (typeof text?.value !== 'string') this.error(`${id}: the text is not where it was, to be packed.`)
      const { statement, expression } = unpacking(text.value)
      return { code: `${statement}export default ${expression};`, map: null }
    },
  },
}

/** The words on screen: a catalogue is nothing but data, and its glossary stands beside it. */
export const wordsPacked: Plugin = {
  name: 'words-packed',
  enforce: 'pre',
  load: {
    filter: { id: /\/src\/words\/[a-z]{2}(\/glossary)?\.ts$/ },
    async handler(id) {
      const { module, dependencies } = await runnerImport<Record<string, unknown>>(id)
      dependencies.forEach((file) => {
        this.addWatchFile(file)
      })
      const exports = Object.entries(module)
      const { statement, expression } = unpacking(JSON.stringify(module))
      const names = exports.map(([name]) => name).join(', ')
      return `${statement}export const { ${names} } = JSON.parse(${expression});`
    },
  },
}

/** Workers of the single file are part of it: each is made from text, packed, instead of an address. */
import type { Plugin } from 'vite'
import { unpacking } from './pack.ts'

/** new Worker(new URL('./name.ts', import.meta.url), { type: 'module', name }) */
export const workerByAddress =
  /new Worker\(\s*new URL\('([^']+)', import\.meta\.url\),\s*(\{ type: 'module'[^}]*\}),?\s*\)/g

export const workersInside: Plugin = {
  name: 'workers-inside',
  enforce: 'pre',
  transform(code) {
    const imports: string[] = []
    const inside = code.replace(workerByAddress, (_, path: string, options: string) => {
      const name = `WorkerInside${imports.length}`
      imports.push(`import ${name} from '${path}?worker&inline'\n`)
      return `new ${name}(${options})`
    })
    return imports.length === 0 ? null : { code: imports.join('') + inside, map: null }
  },
}

export const workersPacked: Plugin = {
  name: 'workers-packed',
  enforce: 'post',
  transform: {
    filter: { id: /\?worker&inline$/ },
    handler(code, id) {
      // The bundler writes: const jsContent = "...";
      const text = this.parse(code)
        .body.flatMap((statement) => (statement.type === 'VariableDeclaration' ? statement.declarations : []))
        .map(({ init }) => init)
        .find((init) => init?.type === 'Literal')
      if (typeof text?.value !== 'string') this.error(`${id}: the worker's text is not where it was, to be packed.`)
      const { statement, expression } = unpacking(text.value)
      return { code: statement + code.slice(0, text.start) + expression + code.slice(text.end), map: null }
    },
  },
}

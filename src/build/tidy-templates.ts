/** Markup and styles are written with indentation, which nobody reads in what is served; a source map needs it. */
import type { Plugin } from 'vite'

const tags = ['html', 'svg', 'css']

interface Node {
  type: string
  start: number
  end: number
}

export const tidyTemplates: Plugin = {
  name: 'tidy-templates',
  apply: ({ build }, { command }) => command === 'build' && !build?.sourcemap,
  enforce: 'post',
  transform: {
    filter: { id: /\/src\/ui\/.*\.ts$/, code: /(html|svg|css)`/ },
    handler(code) {
      let tidied = ''
      let done = 0
      for (const { start, end } of templateTexts(this.parse(code))) {
        tidied += code.slice(done, start) + code.slice(start, end).replace(/\s*\n\s*/g, '\n')
        done = end
      }
      return { code: tidied + code.slice(done), map: null }
    },
  },
}

/** The texts of all templates of these tags, in the order in which they stand. */
function templateTexts(root: unknown): Node[] {
  const found: Node[] = []
  const walk = (part: unknown): void => {
    if (typeof part !== 'object' || part === null) return
    const { type, tag, quasi } = part as { type?: string; tag?: { name?: string }; quasi?: { quasis: Node[] } }
    if (type === 'TaggedTemplateExpression' && tags.includes(tag?.name ?? '')) found.push(...(quasi?.quasis ?? []))
    Object.values(part).forEach(walk)
  }
  walk(root)
  return found.sort((a, b) => a.start - b.start)
}

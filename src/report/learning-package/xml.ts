/** XML written element by element, so that whatever a title holds stays text. */
export type Attributes = Readonly<Record<string, string | number | null>>

/** One element; attributes that are null are left out. `inner` is XML already. */
export function element(name: string, attributes: Attributes, ...inner: readonly string[]): string {
  const written = Object.entries(attributes).map(([key, value]) =>
    value === null ? '' : ` ${key}="${escaped(String(value))}"`,
  )
  const content = inner.filter((each) => each !== '')
  const open = `${name}${written.join('')}`
  if (content.length === 0) return `<${open}/>`
  const isText = content.every((each) => !each.startsWith('<'))
  if (isText) return `<${open}>${content.join('')}</${name}>`
  return `<${open}>\n${content.map(indented).join('\n')}\n</${name}>`
}

/** Signs that XML 1.0 has no place for are left out. */
export function escaped(text: string): string {
  return text
    .replaceAll(/[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, '')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
}

export function document(root: string): string {
  return `<?xml version="1.0" encoding="UTF-8"?>\n${root}\n`
}

function indented(block: string): string {
  return block.replaceAll(/^/gm, '  ')
}

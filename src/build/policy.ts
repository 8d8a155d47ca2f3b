/** The page's content security policy: dropped while developing, and for the single file made of what is in it. */
import { createHash } from 'node:crypto'
import type { Plugin } from 'vite'

export const policyTag = /^.*http-equiv="Content-Security-Policy".*\n/m

/** The development server injects inline styles and scripts, which the page's own content security policy refuses. */
export const relaxPolicyWhileDeveloping: Plugin = {
  name: 'relax-policy-while-developing',
  apply: 'serve',
  transformIndexHtml: (html) => html.replace(policyTag, ''),
}

/** Allows just the scripts and styles that stand in the page. */
export function withPolicy(html: string): string {
  // Elements are gone through in order, so that markup inside a script's texts is not taken for any.
  const elements = Array.from(html.matchAll(/<(script|style)\b[^>]*>([^]*?)<\/\1>/g), ([, tag, text]) => {
    return { tag, hash: `'sha256-${createHash('sha256').update(text).digest('base64')}'` }
  })
  const hashes = (wanted: string) => elements.flatMap(({ tag, hash }) => (tag === wanted ? [hash] : [])).join(' ')
  const policy = [
    "default-src 'none'",
    `script-src ${hashes('script')}`,
    `style-src ${hashes('style')}`,
    'worker-src blob:',
    'img-src data: blob:',
    'font-src data:',
    "base-uri 'none'",
    "form-action 'none'",
    "require-trusted-types-for 'script'",
    'trusted-types lit-html default',
  ].join('; ')
  const first = '<meta charset="utf-8">\n'
  return html.replace(first, `${first}    <meta http-equiv="Content-Security-Policy" content="${policy}">\n`)
}

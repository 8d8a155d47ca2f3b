/** Puts everything that the page needs into one file, under a policy that allows just what is in it. */
import type { Plugin } from 'vite'
import { policyTag, withPolicy } from './policy.ts'
import { workerByAddress } from './workers-inside.ts'

export const oneFile: Plugin = {
  name: 'one-file',
  enforce: 'post',
  // The policy of the served page would not hold here; another takes its place below.
  transformIndexHtml: (html) => html.replace(policyTag, ''),
  generateBundle: {
    order: 'post',
    handler(_, bundle) {
      const page = bundle['index.html']
      if (page.type !== 'asset') this.error('The page to be put into one file is not there.')
      const others = Object.values(bundle).filter(({ fileName }) => fileName !== 'index.html')
      const code = others.map(({ fileName }) => fileName).filter((fileName) => fileName.endsWith('.js'))
      if (code.length > 0) {
        this.error(
          `${code.join(' and ')} stayed outside the single file; the form that is put inside is ${String(workerByAddress)}.`,
        )
      }
      const notices = others.flatMap((file) =>
        file.type === 'asset' && /licence/.test(file.fileName) ? [file.source] : [],
      )
      for (const { fileName } of [...others, page]) Reflect.deleteProperty(bundle, fileName)
      const pictures = others.flatMap((file) => (file.type === 'asset' && file.fileName.endsWith('.svg') ? [file] : []))
      const html = pictures.reduce(
        (whole, { fileName, source }) =>
          whole.replaceAll(`"./${fileName}"`, `"data:image/svg+xml,${encodeURIComponent(String(source))}"`),
        String(page.source),
      )
      const source = withPolicy(html) + licenceComment(notices.map(String))
      this.emitFile({ type: 'asset', fileName: 'tackstair.html', source })
    },
  },
}

/** The file travels alone, so what it is made of carries its licences inside. */
function licenceComment(notices: string[]): string {
  return `\n<!--\n${notices.join('\n\n').replaceAll(/\r\n?/g, '\n').replaceAll('--', '- -').replaceAll('>', '&gt;')}\n-->\n`
}

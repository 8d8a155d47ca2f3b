/**
 * A small learning system on this computer: it unpacks a package, shows the page in a frame beside a SCORM object that
 * notes every call, and has a record store that can be made to fail (tests/report/learning-system/strict-store.ts).
 */
import { readFileSync } from 'node:fs'
import { createServer } from 'node:http'
import type { IncomingMessage, ServerResponse } from 'node:http'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { unzipSync } from 'fflate'
import { contentsOf } from '../../src/report/learning-package/contents-of.ts'
import { packageZip } from '../../src/report/learning-package/package-files.ts'
import type { Launch } from '../../src/report/learning-system/launch.ts'
import { StrictStore } from '../report/learning-system/strict-store.ts'
import type { LaunchWish } from '../report/learning-system/strict-store.ts'

const root = join(import.meta.dirname, '../..')
/** Scripts of scorm-again, as a page loads them; its entry for modules is one folder below. */
const scormAgain = join(dirname(fileURLToPath(import.meta.resolve('scorm-again'))), '..')

export class LearningSite {
  readonly store = new StrictStore()
  /** files of the package, by name */
  readonly files: Readonly<Record<string, Uint8Array>>
  /** what stands after the question mark, as the manifest says */
  readonly parameters: string
  readonly #launch: Launch
  readonly #server = createServer((request, response) => void this.#answer(request, response))
  #port = 0

  constructor(launch: Launch) {
    this.#launch = launch
    const page = readFileSync(join(root, 'dist/tackstair.html'), 'utf8')
    const zip = packageZip(
      contentsOf(
        launch,
        (id) => id,
        'en',
        (key) => key,
      ),
      page,
    )
    if (!zip) throw new Error('The built page was refused.')
    this.files = unzipSync(zip)
    const manifest = Buffer.from(this.files[launch.standard === 'cmi5' ? 'cmi5.xml' : 'imsmanifest.xml']).toString()
    this.parameters = (/\?(standard=[^"<]*)/.exec(manifest)?.[1] ?? '').replaceAll('&amp;', '&')
  }

  get address(): string {
    return `http://127.0.0.1:${this.#port}`
  }

  async open(): Promise<void> {
    await new Promise<void>((resolve) => this.#server.listen(0, '127.0.0.1', resolve))
    const address = this.#server.address()
    if (address === null || typeof address === 'string') throw new Error('The site got no port.')
    this.#port = address.port
  }

  async close(): Promise<void> {
    this.#server.closeAllConnections()
    await new Promise((resolve) => this.#server.close(resolve))
  }

  /** The page of the package, launched for another visit by cmi5. */
  launch(wish: LaunchWish = {}): string {
    const words = this.store.launch(`${this.address}/xapi`, `${this.address}/fetch`, wish)
    return `${this.address}/package/tackstair.html?${this.parameters}&${words}`
  }

  async #answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const address = new URL(request.url ?? '/', this.address)
    const body = await textOf(request)
    const file = this.files[address.pathname.replace('/package/', '')] as Uint8Array | undefined
    if (address.pathname.startsWith('/package/') && file) {
      response.writeHead(200, { 'content-type': 'text/html; charset=utf-8' }).end(file)
    } else if (address.pathname === '/lms.html') {
      response.writeHead(200, { 'content-type': 'text/html; charset=utf-8' }).end(this.#systemPage())
    } else if (/^\/scorm(12|2004)\.js$/.test(address.pathname)) {
      const script = readFileSync(join(scormAgain, address.pathname))
      response.writeHead(200, { 'content-type': 'text/javascript' }).end(script)
    } else if (/^\/(xapi|fetch)/.test(address.pathname)) {
      this.#store(
        { method: request.method ?? 'GET', address, headers: request.headers as Record<string, string>, body },
        response,
      )
    } else if (address.pathname === '/ended') response.writeHead(200, { 'content-type': 'text/html' }).end('Ended.')
    else response.writeHead(404).end()
  }

  #store(request: Parameters<StrictStore['answer']>[0], response: ServerResponse): void {
    const fault = this.store.faultFor(request)
    if (fault === 'down') response.destroy()
    else if (typeof fault === 'number') response.writeHead(fault).end()
    else {
      const { status, body, headers } = this.store.answer(request)
      if (fault === 'lost') response.destroy()
      else response.writeHead(status, { 'content-type': 'application/json', ...headers }).end(body)
    }
  }

  /** It hands back what it was left with, where the test puts that into the name of the window. */
  #systemPage(): string {
    const is12 = this.#launch.standard === 'scorm-1.2'
    return `<!doctype html><meta charset="utf-8"><title>A learning system</title><link rel="icon" href="data:,">
<script src="/${is12 ? 'scorm12' : 'scorm2004'}.js"></script>
<script>
  const settings = { autocommit: false, logLevel: 5, onLogMessage: () => undefined }
  const real = ${is12 ? 'new Scorm12API(settings)' : 'new Scorm2004API(settings)'}
  if (window.name !== '') real.loadFromJSON(JSON.parse(window.name).cmi)
  window.real = real
  window.calls = []
  const names = ${
    is12
      ? "['LMSInitialize', 'LMSFinish', 'LMSGetValue', 'LMSSetValue', 'LMSCommit', 'LMSGetLastError']"
      : "['Initialize', 'Terminate', 'GetValue', 'SetValue', 'Commit', 'GetLastError']"
  }
  window.${is12 ? 'API' : 'API_1484_11'} = Object.fromEntries(names.map((name) => [name, (...values) => {
    const answer = real[${is12 ? 'name' : "'lms' + name"}] ? real[${is12 ? 'name' : "'lms' + name"}](...values) : real[name](...values)
    window.calls.push([name, values, String(answer)])
    return answer
  }]))
</script>
<iframe id="page" src="/package/tackstair.html?${this.parameters}" width="1200" height="700"></iframe>`
  }
}

async function textOf(request: IncomingMessage): Promise<string> {
  const chunks: Buffer[] = []
  for await (const chunk of request) chunks.push(chunk as Buffer)
  return Buffer.concat(chunks).toString()
}

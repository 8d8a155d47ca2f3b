/** Serves a copy of the built page that a test may change and switch off, as a network that goes away. */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:http'
import { tmpdir } from 'node:os'
import { extname, join, normalize } from 'node:path'

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
  '.webmanifest': 'application/manifest+json',
}

export class Site {
  readonly #folder = mkdtempSync(join(tmpdir(), 'tackstair-site-'))
  #server = createServer()
  #port = 0

  constructor() {
    cpSync(join(import.meta.dirname, '../../dist'), this.#folder, { recursive: true })
  }

  get address(): string {
    return `http://127.0.0.1:${this.#port}/`
  }

  async switchOn(): Promise<void> {
    this.#server = createServer((request, response) => {
      const path = normalize(new URL(request.url ?? '/', this.address).pathname)
      const file = path === '/' ? '/index.html' : path
      try {
        const body = readFileSync(join(this.#folder, file))
        response.writeHead(200, { 'content-type': types[extname(file)] ?? 'text/plain', 'cache-control': 'no-cache' })
        response.end(body)
      } catch (error) {
        response.writeHead(404).end(String(error))
      }
    })
    await new Promise<void>((resolve) => this.#server.listen(this.#port, '127.0.0.1', resolve))
    const address = this.#server.address()
    if (address === null || typeof address === 'string') throw new Error('The site got no port.')
    this.#port = address.port
  }

  async switchOff(): Promise<void> {
    this.#server.closeAllConnections()
    await new Promise((resolve) => this.#server.close(resolve))
  }

  change(file: string, edit: (text: string) => string): void {
    const path = join(this.#folder, file)
    const before = readFileSync(path, 'utf8')
    const after = edit(before)
    if (after === before) throw new Error(`Nothing in ${file} was changed.`)
    writeFileSync(path, after)
  }

  /** Takes every file of a folder away, as a server does that holds only the newest build. */
  empty(folder: string): void {
    rmSync(join(this.#folder, folder), { recursive: true })
  }

  async remove(): Promise<void> {
    await this.switchOff()
    rmSync(this.#folder, { recursive: true })
  }
}

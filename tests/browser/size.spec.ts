/** What has to arrive before the first view can be used, what comes only when it is asked for, and the page in one file. */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { expect, test } from '@playwright/test'

const dist = join(import.meta.dirname, '../../dist')

/** Bytes once packed, as servers send it. */
function packed(file: string): number {
  return gzipSync(readFileSync(join(dist, file))).length
}

test('the first view needs less than 200 kB of script', () => {
  const page = readFileSync(join(dist, 'index.html'), 'utf8')
  const first = Array.from(page.matchAll(/(?:src|href)="\.\/(assets\/[^"]+\.js)"/g), ([, file]) => file)
  expect(first.length).toBeGreaterThan(0)
  const size = first.reduce((sum, file) => sum + packed(file), 0)
  expect(size).toBeGreaterThan(20_000)
  expect(size).toBeLessThan(200_000)
})

test('formulas are set and units converted by libraries that are fetched only then', async ({ page }) => {
  const scripts: string[] = []
  page.on('response', (response) => {
    if (response.request().resourceType() === 'script') scripts.push(new URL(response.url()).pathname)
  })
  await page.goto('./', { waitUntil: 'networkidle' })
  expect(scripts.length).toBeGreaterThan(0)
  expect(scripts.filter((path) => /temml|unit-conversion/.test(path))).toEqual([])
})

test('the page in one file is small enough for any stick: below 3 MB', () => {
  const file = 'tackstair.html'
  expect(readFileSync(join(dist, file)).length).toBeLessThan(3_000_000)
  expect(packed(file)).toBeLessThan(1_000_000)
})

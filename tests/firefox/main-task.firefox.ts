/**
 * The main task in Firefox, from the first visit to a verdict and a link. Playwright cannot drive a Firefox as it is
 * installed; WebDriver BiDi, a W3C standard, can.
 */
import type { Browser, Page } from 'puppeteer-core'
import puppeteer from 'puppeteer-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { makeDrill } from '../../src/drill/drill.ts'
import { evidenceKey } from '../../src/drill/evidence.ts'
import { enoughEvidence } from '../../src/drill/judge.ts'
import type { DrillSaid } from '../../src/drill/said.ts'
import { causeSaid, evidenceSaid } from '../../src/drill/said.ts'
import { say } from '../../src/ui/say.ts'
import { Site } from '../browser/site.ts'
import { named, press, tick } from './named.ts'

let browser: Browser
let site: Site
let page: Page
const said: string[] = []

beforeAll(async () => {
  const executablePath = process.env['TACKSTAIR_FIREFOX']
  if (executablePath === undefined) throw new Error('TACKSTAIR_FIREFOX has to name the Firefox to drive.')
  site = new Site()
  await site.switchOn()
  const args = ['--width=1366', '--height=860']
  browser = await puppeteer.launch({ browser: 'firefox', executablePath, args, defaultViewport: null })
  page = await browser.newPage()
  page.on('console', (message) => said.push(message.text()))
  page.on('pageerror', (error) => said.push(error instanceof Error ? error.message : String(error)))
})

afterAll(async () => {
  await browser.close()
  await site.remove()
})

async function open(view: string): Promise<void> {
  await page.goto('about:blank')
  await page.goto(`${site.address}#${view}`)
}

const words = ({ message, values }: DrillSaid) => say(message, { ...values })

/** How many colours a picture holds; one that was never drawn holds hardly any. */
async function coloursOf(tag: string): Promise<number> {
  const picture = await named(page, tag, '')
  return picture.evaluate((element) => {
    const canvas = element.shadowRoot?.querySelector('canvas')
    if (!canvas) return 0
    const copy = new OffscreenCanvas(canvas.width, canvas.height)
    const context = copy.getContext('2d')
    if (!context) return 0
    context.drawImage(canvas, 0, 0)
    return new Set(new Uint32Array(context.getImageData(0, 0, copy.width, copy.height).data.buffer)).size
  })
}

test('the first look, the bench, the strip, a lesson, a drill and a link, without a word on the console', async () => {
  await page.goto(site.address)
  await press(page, say('first.print', { second: 'yellow' }))
  await press(page, say('first.swap'))
  await press(page, say('first.open'))

  await press(page, 'Move black one unit later')
  await named(page, 'button', 'Unit 2: black')
  await named(page, '.said', 'spots')
  await expect.poll(() => coloursOf('tack-section-picture')).toBeGreaterThan(20)
  await press(page, 'Settled', 'label')
  await press(page, 'Undo')
  await press(page, 'Undo')
  await named(page, 'button', 'Unit 1: black')

  await open('view=strip')
  await press(page, 'cyan + magenta')
  await named(page, 'h2, h3', 'Trap of magenta on cyan')

  await open('view=lessons')
  await press(page, 'Begin: What a press sheet is')
  await press(page, say('lessons.next'))
  await named(page, 'h2, h3', 'Step 2 of')

  const drill = makeDrill({ seed: 3, level: 'easy' })
  await open('view=drills&drill=easy:3')
  for (const piece of enoughEvidence(drill)) {
    const name = words(evidenceSaid(drill, piece))
    if (evidenceKey(piece) !== 'eye') await press(page, name)
    await tick(page, name)
  }
  await tick(page, words(causeSaid(drill, drill.faults[0])))
  await press(page, say('room.name'))
  await named(page, 'p', say('drill.verdict.proven'))

  // A link opens on what it says, in a window of its own.
  await open('v=1&inks=yellow:10,cyan:14&sheet=first&view=bench')
  await named(page, 'button', 'Unit 1: yellow')
  expect(said).toEqual([])
})

import { IntlMessageFormat } from 'intl-messageformat'
import { describe, expect, it, vi } from 'vitest'
import { curesFor } from '../../src/drill/cure.ts'
import { makeDrill } from '../../src/drill/drill.ts'
import { allEvidence, quantitiesOf } from '../../src/drill/evidence.ts'
import { jobIds, jobs } from '../../src/drill/jobs.ts'
import { levels } from '../../src/drill/level.ts'
import { observe } from '../../src/drill/observe.ts'
import type { DrillSaid } from '../../src/drill/said.ts'
import {
  causeSaid,
  cureSaid,
  evidenceSaid,
  howSaid,
  misledSaid,
  quantitySaid,
  quantitySpoken,
  reasonSaid,
} from '../../src/drill/said.ts'
import { effectNames } from '../../src/press/effects.ts'
import { oils } from '../../src/physics/pick-test.ts'
import { drills } from '../../src/words/en/drills.ts'
import { instruments } from '../../src/words/en/instruments.ts'

/** ms: on a machine that may be busy with other things */
vi.setConfig({ testTimeout: 120_000 })

/** Throws when a value is missing. */
const say = ({ message, values }: DrillSaid) => String(new IntlMessageFormat(drills[message], 'en').format(values))

describe.each(Object.entries({ ...drills, ...instruments }))('%s', (_, message) => {
  it('is a message that can be filled in', () => {
    expect(() => new IntlMessageFormat(message, 'en')).not.toThrow()
  })
})

describe('everything a drill has to say', () => {
  it('has its words, each with the values it needs', () => {
    const said = Array.from({ length: 12 }, (_, seed) => makeDrill({ seed, level: levels[seed % 3] })).flatMap(
      (drill) => [
        ...drill.offered.flatMap((cause) => [causeSaid(drill, cause), reasonSaid(cause)]),
        ...curesFor(drill).map((cure) => cureSaid(drill, cure)),
        ...allEvidence(drill.ticket).flatMap((piece) => [
          evidenceSaid(drill, piece),
          howSaid(piece),
          ...observe(drill, piece).flatMap(({ quantity }) => [quantitySaid(quantity), quantitySpoken(quantity)]),
        ]),
        misledSaid(drill),
      ],
    )
    for (const each of said) expect(say(each)).not.toMatch(/undefined|\{|\}/)
  })

  it('speaks of a reading in a sentence without the unit of its column', () => {
    const { ticket } = makeDrill({ seed: 3, level: 'easy' })
    for (const quantity of quantitiesOf(ticket)) {
      const sentence = say({
        message: 'drill.verdict.against',
        values: {
          evidence: 'Loupe',
          where: 'job',
          place: 'the job',
          quantity: say(quantitySpoken(quantity)),
          would: 'lower',
        },
      })
      expect(sentence).toMatch(/^Against it speaks “Loupe”\. Were it so, the [a-z]/)
      expect(sentence).toMatch(/ would be lower\.$/)
      expect(sentence).not.toMatch(/unit\)|tack units|\bm\/s|°C|µm|, s\b|, times/)
    }
  })

  it('names every job, level, effect and oil', () => {
    for (const job of jobIds) expect(drills[`drill.job.${job}`]).toBeTruthy()
    for (const level of levels) expect(drills[`drill.level.${level}`]).toBeTruthy()
    for (const effect of effectNames) expect(drills[`effect.${effect}`]).toBeTruthy()
    for (const oil of oils) expect(instruments[`pickTest.oil.${oil}`]).toBeTruthy()
  })

  it('says plainly that a pick velocity is not a press speed', () => {
    expect(instruments['pickTest.notPressSpeed']).toContain('not a press speed')
  })

  it('has jobs of different presses, papers and orders', () => {
    const all = Object.values(jobs)
    expect(new Set(all.map(({ press }) => press.kind)).size).toBe(2)
    expect(new Set(all.map(({ paper }) => paper.name)).size).toBeGreaterThanOrEqual(4)
    expect(new Set(all.map(({ inks }) => inks.map(({ name }) => name).join())).size).toBeGreaterThanOrEqual(3)
  })
})

/** The JSON Schema of a lesson, so that an editor can complete and check it while it is typed. */
import type { JsonSchema } from '@valibot/to-json-schema'
import { toJsonSchema } from '@valibot/to-json-schema'
import { paperNames } from '../physics/paper.ts'
import { ranges } from '../press/ranges.ts'
import { actionSchema } from './action.ts'
import { benchSchema } from './expectation.ts'
import { lessonSchema } from './lesson.ts'
import { readingSchema } from './reading.ts'
import { setUpSchema } from './start.ts'
import { stepSchema } from './step.ts'

/** Checks that have no counterpart in JSON Schema are left to the checker. */
export function lessonJsonSchema(): JsonSchema {
  const schema = toJsonSchema(lessonSchema, {
    errorMode: 'ignore',
    typeMode: 'input',
    definitions: {
      setUp: setUpSchema,
      action: actionSchema,
      reading: readingSchema,
      bench: benchSchema,
      step: stepSchema,
    },
  })
  return { ...schema, title: 'Lesson', $defs: { ...schema.$defs, setUp } }
}

function range(name: keyof typeof ranges): JsonSchema {
  return { type: 'number', minimum: ranges[name].least, maximum: ranges[name].most }
}

function object(properties: Record<string, JsonSchema>, required: string[] = []): JsonSchema {
  return { type: 'object', properties, required, additionalProperties: false }
}

const flag: JsonSchema = { type: 'boolean' }

/** A set-up as the bench reads it; its full check is the bench's own. */
const setUp = object(
  {
    inks: {
      type: 'array',
      minItems: 2,
      maxItems: 8,
      items: object(
        {
          name: { type: 'string' },
          tack: range('tack'),
          film: range('film'),
          coverage: range('coverage'),
          temperature: range('temperature'),
          dampening: range('dampening'),
          colour: {},
          soiled: range('soiled'),
          dryBefore: flag,
        },
        ['name', 'tack'],
      ),
    },
    paper: { anyOf: [{ enum: paperNames }, { type: 'object' }] },
    press: object({
      kind: { enum: ['sheet-fed', 'web'] },
      speed: range('speed'),
      interval: range('interval'),
      temperature: range('temperature'),
      dampening: range('dampening'),
      waterless: flag,
    }),
    reading: { anyOf: [{ enum: ['first', 'settled'] }, object({ sheet: range('sheet') }, ['sheet'])] },
    seed: range('seed'),
  },
  ['inks'],
)

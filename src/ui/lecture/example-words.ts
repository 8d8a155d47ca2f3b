/** What the scenes of the ready lecture say. */
import type { ExampleName, ExampleWords } from '../../session/example-lecture.ts'
import type { MessageKey } from '../say.ts'
import { say } from '../say.ts'

const questions: Readonly<Partial<Record<ExampleName, MessageKey>>> = {
  fails: 'lecture.example.fails.question',
  faces: 'lecture.example.faces.question',
  paper: 'lecture.example.paper.question',
}

const sideBySide: readonly ExampleName[] = ['both', 'faces']

export function exampleWords(example: ExampleName): ExampleWords {
  const question = questions[example]
  return {
    name: say(`lecture.example.${example}.name`),
    note: say(`lecture.example.${example}.note`),
    ...(question ? { question: say(question) } : {}),
    ...(sideBySide.includes(example)
      ? { captions: [say('lecture.example.both.first'), say('lecture.example.both.second')] }
      : {}),
  }
}

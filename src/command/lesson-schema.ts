/** `npm run --silent lesson:schema > lessons/lesson.schema.json`: the JSON Schema by which an editor helps to write lessons. */
import { lessonJsonSchema } from '../lesson/json-schema.ts'

console.log(JSON.stringify(lessonJsonSchema()))

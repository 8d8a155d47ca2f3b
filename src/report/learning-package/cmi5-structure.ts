/** cmi5.xml, the course structure of a cmi5 package (cmi5 1.0, chapter 13): one assignable unit, one objective a task. */
import { decimal } from '../learning-system/scorm-values.ts'
import { writeLaunch } from '../learning-system/launch.ts'
import type { Contents } from './contents.ts'
import { idOf, pageFile } from './contents.ts'
import { document, element, escaped } from './xml.ts'

export function cmi5Structure(contents: Contents): string {
  const { launch, title, description, language, tasks } = contents
  const { mastery } = launch.parcel
  const iri = (part: string) => `urn:uuid:${idOf(contents, part)}`
  const text = (name: string, words: string) =>
    element(name, {}, element('langstring', { lang: language }, escaped(words)))
  const objectives = tasks.map(({ id, title: name }) =>
    element('objective', { id: iri(id) }, text('title', name), text('description', name)),
  )
  return document(
    element(
      'courseStructure',
      { xmlns: 'https://w3id.org/xapi/profiles/cmi5/v1/CourseStructure.xsd' },
      element('course', { id: iri('course') }, text('title', title), text('description', description)),
      element('objectives', {}, ...objectives),
      element(
        'au',
        {
          id: iri('unit'),
          moveOn: mastery === null ? 'Completed' : 'CompletedAndPassed',
          masteryScore: mastery === null ? null : decimal(mastery, 4),
          launchMethod: 'AnyWindow',
        },
        text('title', title),
        text('description', description),
        element('objectives', {}, ...tasks.map(({ id }) => element('objective', { idref: iri(id) }))),
        element('url', {}, escaped(`${pageFile}${writeLaunch(launch)}`)),
      ),
    ),
  )
}

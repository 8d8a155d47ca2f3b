/**
 * imsmanifest.xml of a SCORM 2004 4th edition package (ADL, Content Aggregation Model 1.1 and Sequencing and Navigation 1.1,
 * 2009): one activity that says itself how far it has come, with an objective for each lesson and drill.
 */
import { decimal } from '../learning-system/scorm-values.ts'
import { writeLaunch } from '../learning-system/launch.ts'
import type { Contents } from './contents.ts'
import { idOf, pageFile, readmeFile } from './contents.ts'
import { document, element, escaped } from './xml.ts'

export function manifest2004(contents: Contents): string {
  const { launch, title } = contents
  const item = element(
    'item',
    { identifier: 'item', identifierref: 'page', isvisible: 'true', parameters: writeLaunch(launch) },
    element('title', {}, escaped(title)),
    element('adlcp:completionThreshold', { completedByMeasure: 'true', minProgressMeasure: '1.0' }),
    sequencing(contents),
  )
  return document(
    element(
      'manifest',
      {
        identifier: `tackstair-${idOf(contents, 'manifest')}`,
        version: '1.0',
        xmlns: 'http://www.imsglobal.org/xsd/imscp_v1p1',
        'xmlns:adlcp': 'http://www.adlnet.org/xsd/adlcp_v1p3',
        'xmlns:adlseq': 'http://www.adlnet.org/xsd/adlseq_v1p3',
        'xmlns:adlnav': 'http://www.adlnet.org/xsd/adlnav_v1p3',
        'xmlns:imsss': 'http://www.imsglobal.org/xsd/imsss',
      },
      element('metadata', {}, element('schema', {}, 'ADL SCORM'), element('schemaversion', {}, '2004 4th Edition')),
      element(
        'organizations',
        { default: 'course' },
        element(
          'organization',
          { identifier: 'course', 'adlseq:objectivesGlobalToSystem': 'false' },
          element('title', {}, escaped(title)),
          item,
        ),
      ),
      element(
        'resources',
        {},
        element(
          'resource',
          { identifier: 'page', type: 'webcontent', 'adlcp:scormType': 'sco', href: pageFile },
          element('file', { href: pageFile }),
          element('file', { href: readmeFile }),
        ),
      ),
    ),
  )
}

function sequencing({ launch, tasks }: Contents): string {
  const { mastery } = launch.parcel
  const primary =
    mastery === null
      ? element('imsss:primaryObjective', { objectiveID: 'whole' })
      : element(
          'imsss:primaryObjective',
          { objectiveID: 'whole', satisfiedByMeasure: 'true' },
          element('imsss:minNormalizedMeasure', {}, decimal(mastery, 4)),
        )
  return element(
    'imsss:sequencing',
    {},
    element('imsss:objectives', {}, primary, ...tasks.map(({ id }) => element('imsss:objective', { objectiveID: id }))),
    element('imsss:deliveryControls', {
      tracked: 'true',
      completionSetByContent: 'true',
      objectiveSetByContent: 'true',
    }),
  )
}

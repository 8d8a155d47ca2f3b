/** imsmanifest.xml of a SCORM 1.2 package (ADL, Content Aggregation Model, 2001, chapter 2.3). */
import { decimal } from '../learning-system/scorm-values.ts'
import { writeLaunch } from '../learning-system/launch.ts'
import type { Contents } from './contents.ts'
import { idOf, pageFile, readmeFile } from './contents.ts'
import { document, element, escaped } from './xml.ts'

export function manifest12(contents: Contents): string {
  const { launch, title } = contents
  const { mastery } = launch.parcel
  const item = element(
    'item',
    { identifier: 'item', identifierref: 'page', isvisible: 'true', parameters: writeLaunch(launch) },
    element('title', {}, escaped(title)),
    mastery === null ? '' : element('adlcp:masteryscore', {}, decimal(100 * mastery)),
  )
  return document(
    element(
      'manifest',
      {
        identifier: `tackstair-${idOf(contents, 'manifest')}`,
        version: '1.0',
        xmlns: 'http://www.imsproject.org/xsd/imscp_rootv1p1p2',
        'xmlns:adlcp': 'http://www.adlnet.org/xsd/adlcp_rootv1p2',
      },
      element('metadata', {}, element('schema', {}, 'ADL SCORM'), element('schemaversion', {}, '1.2')),
      element(
        'organizations',
        { default: 'course' },
        element('organization', { identifier: 'course' }, element('title', {}, escaped(title)), item),
      ),
      element(
        'resources',
        {},
        element(
          'resource',
          { identifier: 'page', type: 'webcontent', 'adlcp:scormtype': 'sco', href: pageFile },
          element('file', { href: pageFile }),
          element('file', { href: readmeFile }),
        ),
      ),
    ),
  )
}

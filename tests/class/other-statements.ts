/**
 * Statements of other activities, of every shape that the standard shows: xAPI 1.0.3, Part Two (Data), Appendix A "Example
 * Statements" (the first three below), Appendix B (what an object may be), Appendix C (every kind of interaction) and
 * Appendix D (the statement that is signed). Property for property they are the standard's; names, addresses and words
 * are made up, since its own are of real people and firms.
 */
const base = 'http://works.example'
const learner = { objectType: 'Agent', name: 'Kim', mbox: 'mailto:kim@works.example' }
const verb = (name: string) => ({ id: `http://adlnet.gov/expapi/verbs/${name}`, display: { 'en-US': name } })
const described = (name: string, description: string) => ({
  name: { 'en-US': name },
  description: { 'en-US': description },
})

const simple = {
  id: 'fd0a2b11-4f7e-4c55-8a60-9d1c34a1b001',
  timestamp: '2026-03-02T12:17:00+00:00',
  actor: learner,
  verb: { id: `${base}/verbs#sent-a-note`, display: { 'en-US': 'sent' } },
  object: { id: `${base}/activity/simple-note`, definition: described('simple note', 'A note that was sent.') },
}

const withResult = {
  id: '7c5b0d32-0f3a-4a90-9a1e-3f6b7a2c0002',
  timestamp: '2026-03-03T12:17:00+00:00',
  actor: learner,
  verb: verb('attempted'),
  object: { id: `${base}/example/simpleCourse`, definition: described('simple course', 'A course of somebody else.') },
  result: { score: { scaled: 0.95 }, success: true, completion: true, duration: 'PT1234S' },
}

const long = {
  id: '669c11d0-5b7f-4d2e-8c09-0a7e5b4f0003',
  actor: {
    name: 'Night shift',
    mbox: 'mailto:night@works.example',
    member: [
      { name: 'Lee', account: { homePage: base, name: '1201' }, objectType: 'Agent' },
      { name: 'Noor', openid: `${base}/noor`, objectType: 'Agent' },
      { name: 'Sam', mbox_sha1sum: 'a3c5e7a9b1d3f5071929394959697989a9b9c9d9', objectType: 'Agent' },
    ],
    objectType: 'Group',
  },
  verb: { id: 'http://adlnet.gov/expapi/verbs/attended', display: { 'en-GB': 'attended', 'en-US': 'attended' } },
  result: {
    extensions: { [`${base}/extensions/minutes`]: 'X:\\meetings\\minutes\\monday.txt' },
    success: true,
    completion: true,
    response: 'The rollers are washed at noon.',
    duration: 'PT1H0M0S',
  },
  context: {
    registration: 'ec5f0b1c-3a5d-4b7e-9d4c-1f2e3d4c0004',
    contextActivities: {
      parent: [{ id: `${base}/meetings/series/7`, objectType: 'Activity' }],
      category: [
        {
          id: `${base}/meetings/categories/shift`,
          objectType: 'Activity',
          definition: {
            name: { en: 'shift meeting' },
            description: { en: 'Held at every change of shift.' },
            type: `${base}/activities/category`,
          },
        },
      ],
      other: [
        { id: `${base}/meetings/34`, objectType: 'Activity' },
        { id: `${base}/meetings/35`, objectType: 'Activity' },
      ],
    },
    instructor: { name: 'Lee', account: { homePage: base, name: '1201' }, objectType: 'Agent' },
    team: { name: 'Night shift', mbox: 'mailto:night@works.example', objectType: 'Group' },
    platform: 'A meeting room',
    language: 'tlh',
    statement: { objectType: 'StatementRef', id: '669c11d0-5b7f-4d2e-8c09-0a7e5b4f0003' },
  },
  timestamp: '2026-03-04T05:32:34.804+00:00',
  stored: '2026-03-04T05:32:34.804+00:00',
  authority: { account: { homePage: base, name: 'anonymous' }, objectType: 'Agent' },
  version: '1.0.0',
  object: {
    id: `${base}/meetings/34534`,
    definition: {
      extensions: { [`${base}/extensions/room`]: { name: 'North', id: `${base}/rooms/3` } },
      ...described('meeting', 'A meeting that was held once.'),
      type: 'http://adlnet.gov/expapi/activities/meeting',
      moreInfo: `${base}/rooms/345`,
    },
    objectType: 'Activity',
  },
}

const agent = { name: 'Lee', mbox: 'mailto:lee@works.example', objectType: 'Agent' }
const objects: Record<string, object> = {
  activity: {
    id: `${base}/exampleactivity`,
    definition: { ...described('activity', 'Any activity'), type: `${base}/types/any` },
    objectType: 'Activity',
  },
  agent,
  group: {
    name: 'Day shift',
    account: { homePage: `${base}/homePage`, name: 'DayShift' },
    objectType: 'Group',
    member: [agent, { name: 'Noor', openid: `${base}/noor`, objectType: 'Agent' }],
  },
  reference: { objectType: 'StatementRef', id: 'a713c4fd-53d3-4eac-b5ed-2cf669390005' },
  statement: {
    objectType: 'SubStatement',
    actor: { objectType: 'Agent', mbox: 'mailto:agent@works.example' },
    verb: { id: `${base}/confirmed`, display: { en: 'confirmed' } },
    object: { objectType: 'StatementRef', id: '9e17c4fd-53d3-4eac-b5ed-2cf669390005' },
  },
}

const two = ['cyan', 'magenta'].map((id) => ({ id, description: { 'en-US': id } }))
const interactions: Record<string, object> = {
  'true-false': { correctResponsesPattern: ['true'] },
  choice: { correctResponsesPattern: ['cyan[,]magenta'], choices: two },
  'fill-in': { correctResponsesPattern: ["printer's pie"] },
  'long-fill-in': { correctResponsesPattern: ['{case_matters=false}{lang=en}To keep the ink off the paper.'] },
  likert: { correctResponsesPattern: ['likert_3'], scale: two },
  matching: { correctResponsesPattern: ['cyan[.]3[,]magenta[.]2'], source: two, target: two },
  performance: { correctResponsesPattern: ['wash[.]1:[,]run[.]:10[,]stop[.]'], steps: two },
  sequencing: { correctResponsesPattern: ['cyan[,]magenta'], choices: two },
  numeric: { correctResponsesPattern: ['4[:]'] },
  other: { correctResponsesPattern: ['(35.937432,-86.868896)'] },
}

const signed = {
  version: '1.0.0',
  id: '33cff416-e331-4c9d-969e-5373a1750006',
  actor: learner,
  verb: verb('experienced'),
  object: { id: `${base}/watch?v=4`, objectType: 'Activity', definition: described('A film', 'How ink is mixed') },
  timestamp: '2026-03-01T12:00:00Z',
}

/** The verbs that statements of ours have, told of everything else. */
const withOurVerbs = ['answered', 'completed'].flatMap((name) => [
  ...Object.values(objects).map((object) => ({ ...withResult, verb: verb(name), object })),
  ...Object.entries(interactions).map(([interactionType, more]) => ({
    ...withResult,
    verb: verb(name),
    object: {
      id: `${base}/quiz/${interactionType}`,
      definition: {
        description: { 'en-US': 'A question?' },
        type: 'http://adlnet.gov/expapi/activities/cmi.interaction',
        interactionType,
        ...more,
      },
    },
    result: { ...withResult.result, response: 'cyan' },
  })),
  { ...withResult, verb: verb(name) },
])

export const otherStatements: readonly object[] = [simple, withResult, long, signed, ...withOurVerbs]

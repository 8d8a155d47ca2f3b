/** The instructor's board: results handed in, read and counted; and the file a learner hands in. */
export const board = {
  'board.refused.long': 'The file has {length} characters; allowed are {most}.',
  'board.refused.noJson': 'This is no result file: it is not JSON.',
  'board.refused.format': 'This is no result file of this program.',
  'board.refused.version': 'There has been no such version of the result file.',
  'board.refused.newer':
    'The file is of version {version}, made by a newer version of this program; this one reads up to version {most}.',
  'board.refused.field': 'A value is missing or not allowed: {field}.',
} as const

export type BoardKey = keyof typeof board

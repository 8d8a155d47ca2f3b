/**
 * Prints the model's check table: the trial value, and what this program computes.
 * npx tsx tests/reference/plain/print-check-table.ts [revolutions, 400 when left out]
 */
import { checkRows, checkSetup, webSetup } from './check-rows.ts'
import { thickness, total } from './film.ts'
import { contamination, filmOf, liftedShares, massTrap, patchOf, pickByUnit } from './readings.ts'
import { firstSheetPress, type RunResult, runFrom, settled, settledAlone } from './run.ts'

const revolutions = Number(process.argv[2] ?? 400)
const [cyan, magenta, yellow] = [1, 2, 3]
const four = [0, 1, 2, 3]

const percent = (share: number) => (100 * share).toFixed(1)
const say = (line: string) => process.stdout.write(`${line}\n`)
const compare = (label: string, trial: number[], mine: number[]) =>
  say(`  ${label.padEnd(44)} trial ${trial.join(' ').padEnd(12)} here ${mine.map(percent).join(' ')}`)

say(`after ${revolutions} revolutions, percent`)
for (const row of checkRows) {
  const setup = checkSetup(row.tacks, row.waterless)
  const run: RunResult = settled(setup, revolutions)
  const first = runFrom(firstSheetPress(setup, run.state), 1, setup)
  const barePaperFilm = four.map((unit) => thickness(settledAlone(unit, setup).film))
  say(row.name)
  if (row.twoInks)
    compare('M on C, Y on C, Y on M, last unit soiled', Object.values(row.twoInks), [
      massTrap(run, magenta, cyan),
      massTrap(run, yellow, cyan),
      massTrap(run, yellow, magenta),
      contamination(run)[yellow],
    ])
  if (row.fourInksSettled)
    compare(
      'four films, settled',
      row.fourInksSettled,
      four.map((ink) => filmOf(run, ink, four) / filmOf(run, ink, [ink])),
    )
  if (row.fourInksFirstSheet)
    compare(
      `four films, first sheet, of ${barePaperFilm[0].toFixed(3)} um`,
      row.fourInksFirstSheet,
      four.map((ink) => filmOf(first, ink, four) / barePaperFilm[ink]),
    )
  const lastNip = patchOf(first, four).nips[yellow]
  say(`  first sheet, unit 4: lifts ${liftedShares(patchOf(first, four), yellow, setup).map(percent).join(' ')}`)
  say(`  first sheet, unit 4: parts at [no contact, paper, 1, 2, 3, blanket] ${lastNip.shares.map(percent).join(' ')}`)
  say(
    `  first sheet, two inks, of the bare film: M on C ${percent(filmOf(first, magenta, [cyan, magenta]) / barePaperFilm[magenta])}` +
      ` Y on C ${percent(filmOf(first, yellow, [cyan, yellow]) / barePaperFilm[yellow])}` +
      ` Y on M ${percent(filmOf(first, yellow, [magenta, yellow]) / barePaperFilm[yellow])}`,
  )
  say(
    `  contamination by unit ${contamination(run).map(percent).join(' ')}; balance gap ${run.balance.gap.map((gap) => gap.toExponential(0)).join(' ')} um`,
  )
}

say('web press, 10 m/s: share of the sheet picked, by unit and summed')
for (const paperName of ['light-weight coated', 'weak uncoated'])
  for (const tacks of [
    [16, 14, 12, 10],
    [12, 11, 10, 9],
  ]) {
    const setup = webSetup(tacks, paperName)
    const picked = pickByUnit(settled(setup, revolutions), setup)
    say(
      `  ${paperName}, ${tacks.join('-')}: ${picked.map((share) => share.toExponential(2)).join(' ')}; sum ${total(picked).toExponential(2)}`,
    )
  }

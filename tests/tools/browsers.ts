/** Finds or installs the browsers that later stages drive, beside the stages that only read: an installation mostly waits. */
import { provideChromium } from '../browser/chromium.ts'
import { findFirefox } from '../firefox/firefox.ts'

console.log(`Chromium: ${provideChromium()}`)
console.log(`Firefox: ${findFirefox() ?? 'none here, and none could be installed; its stage will be left out'}`)

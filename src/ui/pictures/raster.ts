/** An SVG file as a PNG file of 300 points to the inch, in the page's own typeface. */
import { withDensity } from '../../report/png-density.ts'

const perInch = 300

/** Pixels of so many mm. */
function pixelsOf(mm: number): number {
  return Math.round((mm / 25.4) * perInch)
}

/** Null where the browser makes no picture of that size. `width` in mm. */
export async function pngOf(svg: string, width: number): Promise<Blob | null> {
  const style = await typefaces()
  const written = svg.replace('<title', `<style>${style.join('')}</style>\n<title`)
  const address = URL.createObjectURL(new Blob([written], { type: 'image/svg+xml' }))
  try {
    const image = new Image()
    image.src = address
    await image.decode()
    const canvas = document.createElement('canvas')
    canvas.width = pixelsOf(width)
    canvas.height = Math.round((canvas.width * image.naturalHeight) / image.naturalWidth)
    const context = canvas.getContext('2d')
    if (!context) return null
    context.drawImage(image, 0, 0, canvas.width, canvas.height)
    const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'))
    if (!blob) return null
    const bytes = withDensity(new Uint8Array(await blob.arrayBuffer()), perInch)
    return new Blob([bytes], { type: 'image/png' })
  } finally {
    URL.revokeObjectURL(address)
  }
}

/** A picture knows no typeface of the page around it, so it carries the page's own along. */
async function typefaces(): Promise<string[]> {
  const rules = [...document.styleSheets].flatMap((sheet) => [...sheet.cssRules].filter(isTypeface))
  return Promise.all(rules.map(withinItself))
}

function isTypeface(rule: CSSRule): rule is CSSFontFaceRule {
  return rule instanceof CSSFontFaceRule
}

async function withinItself({ cssText, parentStyleSheet }: CSSFontFaceRule): Promise<string> {
  const written = /url\("([^"]+)"\)/.exec(cssText)?.[1]
  if (written === undefined || written.startsWith('data:')) return cssText
  const response = await fetch(new URL(written, parentStyleSheet?.href ?? location.href))
  return cssText.replace(written, await addressOf(await response.blob()))
}

function addressOf(blob: Blob): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader()
    reader.onload = () => resolve(reader.result as string)
    reader.onerror = () => reject(reader.error ?? new Error('The typeface could not be read.'))
    reader.readAsDataURL(blob)
  })
}

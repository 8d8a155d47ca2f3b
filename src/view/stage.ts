/**
 * One drawn picture in the page: a renderer that fits the machine, drawing only when told to. When the graphics context
 * is lost the picture is rebuilt from its state, with the browser's own canvas from then on.
 */
import 'pixi.js/unsafe-eval'
import 'pixi.js/graphics'
import 'pixi.js/text'
import type { Container, Renderer } from 'pixi.js'
import { Ticker, WebGLRenderer, autoDetectRenderer } from 'pixi.js'
import type { BenchPicture, View } from './picture.ts'
import type { RendererKind } from './renderer-kind.ts'
import { rendererHere } from './renderer-kind.ts'
import type { Size } from './shapes.ts'

/** What is shown: builds its objects when made, arranges them when drawn. */
export interface Scene {
  root: Container
  draw: (picture: BenchPicture, size: Size) => void
  destroy: () => void
}

// The page keeps the clock; pixi's own would tick without end.
Ticker.system.autoStart = false
Ticker.system.stop()

/** More pixels than this per px cost time and show nothing more. */
const finest = 2

export interface Stage extends View {
  /** the canvas of the moment; another one after a lost context */
  readonly canvas: () => HTMLCanvasElement
}

/** Fills `host` with what `makeScene` shows. `settle` is given every canvas that is put into the page. */
export async function createStage(
  host: HTMLElement,
  makeScene: () => Scene,
  settle: (canvas: HTMLCanvasElement) => void = () => undefined,
): Promise<Stage> {
  let last: BenchPicture | null = null
  let gone = false
  const isGone = () => gone
  await typeface(host)
  let { renderer, scene } = await raise(rendererHere())

  async function raise(kind: RendererKind): Promise<{ renderer: Renderer; scene: Scene }> {
    const made = await autoDetectRenderer({
      preference: [kind],
      antialias: true,
      autoDensity: true,
      backgroundAlpha: 0,
      resolution: density(),
      skipExtensionImports: true,
      gcActive: false,
      ...sizeOf(host),
    })
    const { canvas } = made
    canvas.style.display = 'block'
    canvas.setAttribute('aria-hidden', 'true')
    canvas.addEventListener('webglcontextlost', () => void rebuild(canvas))
    canvas.addEventListener('contextrestored', render)
    settle(canvas)
    return { renderer: made, scene: makeScene() }
  }

  /** Of a canvas that has been taken away already, the loss is no news. */
  async function rebuild(lost: HTMLCanvasElement): Promise<void> {
    if (isGone() || lost !== renderer.canvas) return
    const before = { renderer, scene }
    const after = await raise('canvas')
    if (isGone()) {
      take(after)
      return
    }
    forgetContext(before.renderer)
    take(before)
    ;({ renderer, scene } = after)
    host.append(renderer.canvas)
    render()
  }

  function take(old: { renderer: Renderer; scene: Scene }): void {
    old.scene.destroy()
    old.renderer.canvas.remove()
    old.renderer.destroy()
  }

  function render(): void {
    if (!last || gone) return
    scene.draw(last, sizeOf(host))
    renderer.render(scene.root)
  }

  host.append(renderer.canvas)
  return {
    canvas: () => renderer.canvas,
    draw: (picture) => {
      last = picture
      render()
    },
    resize: () => {
      const { width, height } = sizeOf(host)
      renderer.resize(width, height, density())
      render()
    },
    destroy: () => {
      gone = true
      take({ renderer, scene })
    },
  }
}

/** Pixi lets go of its context by losing it, and a browser complains when it is lost already. */
function forgetContext(renderer: Renderer): void {
  if (renderer instanceof WebGLRenderer) delete renderer.context.extensions.loseContext
}

function density(): number {
  return Math.min(finest, window.devicePixelRatio)
}

function sizeOf(host: HTMLElement): Size {
  return { width: Math.max(1, host.clientWidth), height: Math.max(1, host.clientHeight) }
}

/** Letters drawn before their typeface has come would stay in another one. */
async function typeface(host: HTMLElement): Promise<void> {
  const { fonts } = host.ownerDocument
  await Promise.all(['400', '600'].map((weight) => fonts.load(`${weight} 13px "Source Sans 3"`)))
}

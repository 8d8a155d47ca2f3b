/**
 * One drawn picture in the page: a renderer that fits the machine, drawing only when told to. When the graphics context
 * is lost the picture is rebuilt from its state, with the browser's own canvas from then on.
 */
import 'pixi.js/unsafe-eval'
import 'pixi.js/graphics'
import 'pixi.js/text'
import type { Renderer } from 'pixi.js'
import { Container, Ticker, WebGLRenderer, autoDetectRenderer, getTestContext } from 'pixi.js'
import { density } from './density.ts'
import { nextTurn } from './next-turn.ts'
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

/** A scene with what draws it; `whole` magnifies all of it. */
interface Raised {
  renderer: Renderer
  scene: Scene
  whole: Container
}

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
  /** what takes longest the first time is made a turn before it is first shown */
  let isShown = false
  const isGone = () => gone
  await typeface(host)
  const kind = await kindHere()
  let { renderer, scene, whole } = await raise(kind)

  async function raise(kind: RendererKind): Promise<Raised> {
    const made = await autoDetectRenderer({
      preference: [kind],
      antialias: true,
      autoDensity: true,
      backgroundAlpha: 0,
      resolution: density(sizeOf(host)),
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
    const drawn = makeScene()
    const around = new Container()
    around.addChild(drawn.root)
    return { renderer: made, scene: drawn, whole: around }
  }

  /** Of a canvas that has been taken away already, the loss is no news. */
  async function rebuild(lost: HTMLCanvasElement): Promise<void> {
    if (isGone() || lost !== renderer.canvas) return
    const before = { renderer, scene, whole }
    const after = await raise('canvas')
    if (isGone()) {
      take(after)
      return
    }
    forgetContext(before.renderer)
    take(before)
    ;({ renderer, scene, whole } = after)
    host.append(renderer.canvas)
    render()
  }

  function take(old: Raised): void {
    old.scene.destroy()
    old.whole.destroy()
    old.renderer.canvas.remove()
    old.renderer.destroy()
  }

  // A context can be gone some time before that is announced; drawing to it would fail.
  const canDraw = () => !gone && !isLost(renderer)

  function render(): void {
    if (!last || !canDraw()) return
    const { width, height } = sizeOf(host)
    const { magnified } = last
    scene.draw(last, { width: width / magnified, height: height / magnified })
    whole.scale.set(magnified)
    if (isShown) renderer.render(whole)
    else void showFirst()
  }

  async function showFirst(): Promise<void> {
    await nextTurn()
    isShown = true
    if (canDraw()) renderer.render(whole)
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
      renderer.resize(width, height, density({ width, height }))
      render()
    },
    destroy: () => {
      gone = true
      take({ renderer, scene, whole })
    },
  }
}

/**
 * Each of the two contexts that are asked what this machine can do takes long where graphics are done in software; pixi
 * asks its own, once, and would do so in the middle of the first drawing.
 */
async function kindHere(): Promise<RendererKind> {
  const kind = rendererHere()
  await nextTurn()
  getTestContext()
  await nextTurn()
  return kind
}

/** Pixi lets go of its context by losing it, and a browser complains when it is lost already. */
function forgetContext(renderer: Renderer): void {
  if (renderer instanceof WebGLRenderer) delete renderer.context.extensions.loseContext
}

function sizeOf(host: HTMLElement): Size {
  return { width: Math.max(1, host.clientWidth), height: Math.max(1, host.clientHeight) }
}

/** Letters drawn before their typeface has come would stay in another one. */
async function typeface(host: HTMLElement): Promise<void> {
  const { fonts } = host.ownerDocument
  await Promise.all(['400', '600'].map((weight) => fonts.load(`${weight} 13px "Source Sans 3"`)))
}

function isLost(renderer: Renderer): boolean {
  return renderer instanceof WebGLRenderer && renderer.gl.isContextLost()
}

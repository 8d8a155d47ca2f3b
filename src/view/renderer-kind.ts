/** Which way of drawing this machine is good at. */

export type RendererKind = 'webgl' | 'canvas'

/**
 * Graphics done in software are far quicker through the browser's own canvas than through WebGL, and no other sign of
 * them is reliable than the renderer's own name: SwiftShader, llvmpipe, softpipe, Microsoft Basic Render Driver and so on.
 */
export function rendererFor(name: string | null): RendererKind {
  return name === null || /swiftshader|llvmpipe|softpipe|software|basic render/i.test(name) ? 'canvas' : 'webgl'
}

let found: RendererKind | undefined

/** Asks the machine once. */
export function rendererHere(): RendererKind {
  return (found ??= rendererFor(rendererName()))
}

/** What draws WebGL here, by its unmasked name; null where there is no WebGL 2. */
function rendererName(): string | null {
  const gl = document.createElement('canvas').getContext('webgl2')
  if (!gl) return null
  const unmasked = gl.getExtension('WEBGL_debug_renderer_info')
  const name: unknown = gl.getParameter(unmasked ? unmasked.UNMASKED_RENDERER_WEBGL : gl.RENDERER)
  gl.getExtension('WEBGL_lose_context')?.loseContext()
  return String(name)
}

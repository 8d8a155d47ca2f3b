import { expect, test } from 'vitest'
import { rendererFor } from '../../src/view/renderer-kind.ts'

test.each([
  'ANGLE (Google, Vulkan 1.3.0 (SwiftShader Device (Subzero) (0x0000C0DE)), SwiftShader driver)',
  'llvmpipe (LLVM 15.0.7, 256 bits)',
  'softpipe',
  'ANGLE (Microsoft, Microsoft Basic Render Driver (0x0000008C) Direct3D11 vs_5_0 ps_5_0, D3D11)',
  'Apple Software Renderer',
])('graphics done in software are drawn on a plain canvas: %s', (name) => {
  expect(rendererFor(name)).toBe('canvas')
})

test('without WebGL there is the plain canvas', () => {
  expect(rendererFor(null)).toBe('canvas')
})

test.each([
  'ANGLE (Intel, Mesa Intel(R) UHD Graphics 620 (KBL GT2), OpenGL 4.6)',
  'Apple GPU',
  'Mali-G78',
  'Adreno (TM) 640',
])('real graphics draw WebGL: %s', (name) => {
  expect(rendererFor(name)).toBe('webgl')
})

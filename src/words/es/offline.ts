/** Working without a network, and newer versions, in Spanish. */
import type { offline as english } from '../en/offline.ts'
import type { Translated } from '../translated.ts'

export const offline: Translated<typeof english> = {
  'offline.newVersion':
    'Hay lista una versión más nueva de esta página. Al tomarla, la página se carga de nuevo; tu configuración se conserva.',
  'offline.take': 'Tomar la versión nueva',
  'offline.later': 'Más tarde',
  'offline.replaced':
    'Otra pestaña ha tomado una versión más nueva. Esta sigue como está hasta que vuelvas a cargarla.',
  'offline.close': 'Cerrar',
}

/** What suits the person at the page, in Spanish. */
import type { comfort as english } from '../en/comfort.ts'
import type { Translated } from '../translated.ts'

export const comfort: Translated<typeof english> = {
  'comfort.button': 'Ajustes',
  'comfort.head': 'Como te venga bien',
  'comfort.theme': 'Colores',
  'comfort.theme.auto': 'Los del sistema',
  'comfort.theme.light': 'Claros',
  'comfort.theme.dark': 'Oscuros, para una sala a oscuras',
  'comfort.theme.high contrast': 'Alto contraste',
  'comfort.motion': 'Movimiento',
  'comfort.motion.auto': 'El del sistema',
  'comfort.motion.reduced': 'Menos: imágenes fijas en lugar de móviles',
  'comfort.motion.full': 'Todo',
  'comfort.sound': 'Sonido',
  'comfort.soundOn': 'Quiero oír la línea de contacto',
  'comfort.soundMeans':
    'Mientras las películas se separan oyes un tono suave: cuanto más agudo, más fuerza en la película que cede. Un golpe sordo dice que se arrancó papel.',
  'comfort.measures': 'Unidades de medida',
  'comfort.kept':
    'Se guarda en este navegador para todas las pestañas de esta página. Nada de esto cambia lo que imprime la máquina.',
  'comfort.notKept': 'Este navegador no guarda nada de esta página, así que lo que elijas dura hasta que la cierres.',
  'comfort.fromFile':
    'El archivo lo guardó alguien cuya página se veía o sonaba de otra manera: {list}. La tuya sigue como está si no lo adoptas.',
  'comfort.takeOver': 'Adoptarlo',
  'comfort.takenOver': 'La página está ahora como la tenía quien guardó el archivo.',
  'comfort.was.theme': 'colores: {value}',
  'comfort.was.motion': 'movimiento: {value}',
  'comfort.was.sound': 'sonido: {value}',
  'comfort.was.language': 'idioma: {value}',
  'comfort.sound.on': 'encendido',
  'comfort.sound.off': 'apagado',
}

/** What a nip did, in Spanish. Terms in [[ ]] link to the glossary. */
import type { nip as english } from '../en/nip.ts'
import type { Translated } from '../translated.ts'

export const nip: Translated<typeof english> = {
  'nip.nothing': 'Aquí no pasa nada: el cuerpo {unit} no imprime tinta en este parche, y no llega tinta húmeda.',
  'nip.idle':
    'El cuerpo {unit} no imprime nada aquí, pero su [[blanket|mantilla]] toca la tinta húmeda: toma {lifted, number, ::.00} µm y devuelve {laid, number, ::.00} µm.',
  'nip.bare':
    'La [[ink-film|película]] de {ink} encontró papel desnudo. El papel agarró enseguida {held, number, ::.00} µm y el resto se dividió: de {brought, number, ::.00} µm se quedaron {laid, number, ::.00} µm.',
  'nip.dry':
    'La [[ink-film|película]] de {ink} encontró tinta seca, que no se puede levantar: de {brought, number, ::.00} µm se quedaron {laid, number, ::.00} µm, como sobre papel.',
  'nip.took':
    'En {count, number} de {of, number} puntos la [[ink-film|película]] de {ink} fue la más débil, así que se dividió allí y dejó la mitad sobre la de {below}.',
  'nip.failed':
    'Solo en {count, number} de {of, number} puntos fue la [[ink-film|película]] de {ink} la más débil; solo allí se dividió y dejó la mitad.',
  'nip.lifted':
    'En {count, number} de {of, number} era más débil una película de debajo, sobre todo la de {weakest} ({weakestCount, number}): se dividió ella, la mantilla [[lifting|levantó]] una parte con todo lo que había encima, y allí no se quedó nada de {ink}.',
  'nip.lifted-one':
    'En {count, number} de {of, number} era más débil la película de {weakest}, debajo: se dividió ella, la mantilla [[lifting|levantó]] una parte, y allí no se quedó nada de {ink}.',
  'nip.torn':
    'En {count, number} de {of, number} puntos lo más débil fue el papel: su superficie quedó [[picking|arrancada]] con todo lo que tenía encima.',
  'nip.open':
    'En {count, number} de {of, number} puntos la película era demasiado fina para llegar a un hueco y no tocó nada.',
}

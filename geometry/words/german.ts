/** German for what the geometry says. It is loaded when German is chosen. */
import { runsOf } from './runsOf.ts'
import { sayLength } from '../exact/lengths.ts'
import { GERMAN_KINDS, GERMAN_METHODS, ONE_GERMAN_KIND } from './germanPhrases.ts'
import type { BattingId, BattingSize, BlockLine, ChartPieceId, ClashingChain, FoundValue, GeeseOfWings, PressNotKept } from '../values/messages.ts'
import { unitInGerman, unitLabelInGerman } from './unitGerman.ts'
import { PRESSED_WAYS, pressedInGerman } from './pressGerman.ts'
import { say, type Words } from './words.ts'

/** `ist "3"`, `ist eine Liste`, `fehlt`. */
const is = (value: FoundValue): string => (value === 'missing' ? 'fehlt' : `ist ${found(value)}`)
const found = (value: FoundValue): string =>
  value === 'missing' ? 'nichts' : value === 'list' ? 'eine Liste' : value === 'object' ? 'ein Objekt' : value.text

const SMALL_NUMBERS = ['null', 'eins', 'zwei', 'drei', 'vier', 'fünf', 'sechs', 'sieben', 'acht', 'neun', 'zehn', 'elf', 'zwölf']
const inWords = (number: number, one: string, many: string): string => (number === 1 ? one : `${SMALL_NUMBERS[number] ?? number} ${many}`)
const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`

/** `zwei Gänse mit Moos links und Pflaume rechts, Spitze oben`. */
function geeseWords(geese: readonly GeeseOfWings[]): string {
  const each = geese.map(
    ({ count, left, right }) =>
      `${inWords(count, 'eine Gans', 'Gänse')} mit ${left === right ? `beiden Flügeln aus ${left}` : `${left} links und ${right} rechts`}`,
  )
  return `${each.join('; ')}${geese.some(({ left, right }) => left !== right) ? ', Spitze oben' : ''}`
}

const QUILT_CHAPTERS = {
  frame: 'Die Blöcke einrahmen',
  layer: 'Die Lagen der Blöcke',
  quilt: 'Die Blöcke quilten',
  join: 'Den Quilt verbinden',
  finish: 'Den Quilt fertigstellen',
} as const

const QUILT_FINISHES = {
  sash: 'Zwischenstreifen außen herum annähen',
  borders: 'Die Ränder annähen',
  layer: 'Die Lagen des Quilts',
  quilt: 'Quilten',
  binding: 'Einfassen',
  rim: 'Den Rand umschlagen',
  label: 'Ein Etikett annähen',
  sleeve: 'Einen Tunnel zum Aufhängen annähen',
} as const

const QUILT_CUTS = {
  'block-border': 'Ränder der Blöcke',
  frame: 'Rahmenstreifen',
  plain: 'einfarbige Stücke',
  sash: 'Zwischenstreifen',
  corner: 'Ecken der Zwischenstreifen',
  strip: 'Verbindungsstreifen',
  border: 'Ränder des Quilts',
} as const

const positionsWords = (numbers: readonly number[]): string => {
  const runs = runsOf(numbers)
  const list = runs.length < 2 ? (runs[0] ?? '') : `${runs.slice(0, -1).join(', ')} und ${runs.at(-1)}`
  return `${numbers.length === 1 ? 'Platz' : 'Plätze'} ${list}`
}

const QUARTERS = ['um 0°', 'um 90° nach rechts', 'um 180°', 'um 90° nach links'] as const

const BATTINGS: Readonly<Record<BattingId, string>> = {
  'cotton-scrim': 'Baumwolle, genadelt, mit Gitter',
  'cotton-needled': 'Baumwolle, genadelt',
  bamboo: 'Bambus und Baumwolle',
  'cotton-natural': 'Baumwolle, natur, dünn',
  wool: 'Wolle',
  'polyester-thick': 'Polyester, dick',
  'cotton-no-scrim': 'Baumwolle, traditionell, ohne Gitter',
  'cotton-bleached': 'Baumwolle, gebleicht, ungebunden',
  'in-use': 'Jedes Vlies, für einen viel benutzten Quilt',
}

const BATTING_SIZES: Readonly<Record<BattingSize, string>> = {
  craft: 'Bastelstück',
  crib: 'Kinderbett',
  throw: 'Überwurf',
  twin: 'Einzelbett',
  full: 'Doppelbett',
  queen: 'breites Doppelbett',
  king: 'sehr breites Doppelbett',
}

const CHART_PIECES: Readonly<Record<ChartPieceId, string>> = {
  'large-square': '1 großes Quadrat',
  'small-squares': '4 kleine Quadrate',
  squares: '2 Quadrate',
  'centre-square': '1 Quadrat für die Mitte',
  'halved-squares': '2 Quadrate, halbiert',
  'across-on-point': 'quer, auf der Spitze',
  'side-square': '4 Seiten: ein Quadrat, geviertelt',
  'corner-square': '2 Ecken: ein Quadrat, halbiert',
}

const LINES = { row: 'Reihe', column: 'Spalte' } as const

const NOT_KEPT: Readonly<Record<PressNotKept, string>> = {
  'no-seam': 'dort läuft keine Naht dieses Plans',
  'several-seams': 'dort treffen sich mehrere Nähte; gib einen Punkt auf einer von ihnen an',
  'end-of-seam': 'das ist das Ende einer Naht; gib einen Punkt zwischen ihren Enden an',
  'neither-side': 'der Punkt, zu dem gebügelt werden soll, liegt auf keiner Seite der Naht',
  'later-word': 'du hast dir später etwas anderes gewünscht',
}

const ORDERS = { rows: 'Reihen', columns: 'Spalten', sections: 'Abschnitten' } as const

const alikeChoices = (choices: number): string =>
  `Gleiche Einheiten werden gleich gebügelt. Es ${choices === 1 ? 'bleibt eine Möglichkeit' : `bleiben ${choices} Möglichkeiten`}.`

function chainWords({ joins, length, settled, clashes }: ClashingChain): string {
  const named = joins.length === length ? `Die Nähte ${joins.join(', ')}` : `${length} Nähte ab ${joins[0]}`
  const cause = settled > 0 ? `${settled} davon hast du oder hat die Methode festgelegt` : 'sie laufen im Kreis, und der Kreis geht nicht auf'
  return `${named} hängen voneinander ab: ${cause}. Also ${clashes === 1 ? 'kann mindestens eine Kreuzung' : `können mindestens ${clashes} Kreuzungen`} nicht ineinandergreifen`
}

const joined = (words: readonly (string | number)[]): string =>
  words.length < 2 ? String(words[0] ?? '') : `${words.slice(0, -1).join(', ')} und ${words.at(-1)}`

const BLOCK_LINES: Readonly<Record<BlockLine, readonly [one: string, many: string]>> = {
  row: ['Reihe', 'Reihen'],
  column: ['Spalte', 'Spalten'],
  section: ['Abschnitt', 'Abschnitte'],
}

export const germanMessages: Words = {
  'step-make-units': ({ count, kind, hand, labels }) =>
    `Mach ${count} ${count === 1 ? ONE_GERMAN_KIND[kind] : GERMAN_KINDS[kind]}${hand === null ? '' : hand === 'left' ? ', linke Hand' : ', rechte Hand'}: ${joined(labels)}`,
  'step-lay-out': 'Leg den Block aus',
  'step-sew-line': ({ line, places, alike }) =>
    `Näh ${BLOCK_LINES[line][places.length > 1 ? 1 : 0]} ${joined(places)}${alike > 1 ? `: ${alike} gleiche` : ''}`,
  'step-join-lines': ({ line }) => `Näh die ${BLOCK_LINES[line][1]} zusammen`,
  'step-sew-block': 'Näh den Block zusammen',
  'step-border': ({ border, part }) =>
    `Näh den ${border === null ? '' : `${border}. `}Rand an: ${part === 'sides' ? 'die Seiten' : 'oben und unten'}`,

  'not-json': 'das ist keine Blockdatei; öffne eine Datei, die Nestwright gespeichert hat',
  'other-format': ({ value }) => `${is(value)}; eine Blockdatei sagt "nestwright.block"`,
  'newer-version': ({ version }) => `ist ${version}, aus einem neueren Nestwright; aktualisiere Nestwright, um sie zu öffnen`,
  'other-version': ({ value }) => `${is(value)}; gib 1 an`,
  'not-object': ({ value }) => `${is(value)}; gib ein Objekt in geschweiften Klammern an`,
  'not-list': ({ value }) => `${is(value)}; gib eine Liste in eckigen Klammern an`,
  'not-one-of': ({ value, known }) => `${is(value)}; gib eines von diesen an: ${known.join(', ')}`,
  'not-flag': ({ value }) => `${is(value)}; gib true oder false an`,
  'too-deep': ({ most }) =>
    `enthält Listen oder Objekte, die mehr als ${most} tief ineinander liegen; öffne eine Datei, die Nestwright gespeichert hat`,
  'too-many-values': ({ most }) => `enthält mehr als ${most / 1e6} Millionen Werte; öffne eine Datei, die Nestwright gespeichert hat`,
  'not-length': ({ value }) => `${is(value)}; gib eine Länge an, etwa 3 oder "2 1/2"`,
  'list-too-long': ({ count, most }) => `hat ${count} Einträge; gib höchstens ${most} an`,
  'length-not-above-zero': ({ value }) => `${is(value)}; gib eine Länge über null an`,
  'length-beyond-rulers': ({ value }) => `${is(value)}, zu klein oder zu groß zum Messen; gib eine Länge an, etwa 3 oder "2 1/2"`,
  'not-measure': ({ value }) => `${is(value)}; gib "in" oder "cm" an`,
  'not-block-count': ({ value, most }) => `${is(value)}; gib eine ganze Zahl von Blöcken von 1 bis ${most} an`,
  'not-cell-count': ({ value, most }) => `${is(value)}; gib eine ganze Zahl von Kästchen von 1 bis ${most} an`,
  'not-id': ({ value }) => `${is(value)}; gib 1 bis 64 Buchstaben, Ziffern, ".", "_" oder "-" an`,
  'id-taken': ({ value }) => `${is(value)}, was schon vergeben ist; gib eine andere Kennung an`,
  'not-name': ({ value }) => `${is(value)}; gib einen Namen in Anführungszeichen an`,
  'name-too-long': ({ count, most }) => `hat ${count} Zeichen; gib einen Namen mit höchstens ${most} an`,
  'not-text': ({ value }) => `${is(value)}; gib Text in Anführungszeichen an`,
  'text-too-long': ({ count, most }) => `hat ${count} Zeichen; gib höchstens ${most} an`,
  'not-colour': ({ value }) => `${is(value)}; gib eine Farbe als "#rrggbb" an`,
  'not-print-colour': ({ value }) => `${is(value)}; gib die Farbe des Aufdrucks als "#rrggbb" an`,
  'not-print-photo': ({ value, most }) => `${is(value)}; gib ein Foto als "data:image/jpeg;base64,…" mit höchstens ${most} Zeichen an`,
  'photograph-size': ({ width, height, most }) => `ist ${width} × ${height} Pixel groß; gib ein Bild mit 1 bis ${most / 1e6} Millionen Pixeln an`,
  'not-photograph': ({ value }) => `${is(value)}; gib ein Bild als "data:image/jpeg;base64,…" oder "data:image/png;base64,…" an`,
  'unknown-fabric': ({ value }) => `nennt den Stoff ${found(value)}, der nicht in der Stoffliste steht; nimm ihn auf, oder nimm einen anderen`,
  'not-position': ({ value }) => `${is(value)}; gib Kästchen als Zahl oder als Bruch wie "1/3" an`,
  'position-too-far': ({ value, most }) => `${is(value)}; bleib innerhalb von ${most} Kästchen`,
  'position-not-exact': ({ value }) => `${is(value)}, ein zu feiner Bruch neben den anderen Positionen; nimm einen einfacheren`,
  'not-pair': ({ value }) => `${is(value)}; gib zwei Zahlen in eckigen Klammern an`,
  'too-many-units': ({ count, most }) => `enthält ${count} Einheiten; ein Block hat höchstens ${most}`,
  'method-of-another-kind': ({ value, kind, known }) =>
    `${is(value)}, womit man keine ${GERMAN_KINDS[kind]} macht; gib eines von diesen an: ${known.join(', ')}`,
  'too-many-patches': ({ count, most }) => `nennt ${count} Stücke; eine Einheit hat höchstens ${most}`,
  'strips-with-hole': ({ value }) => `nennt ${found(value)}; nummeriere die Streifen ab strip1 lückenlos`,
  'unknown-patch': ({ value, kind, known }) => `nennt ${found(value)}, was es bei ${GERMAN_KINDS[kind]} nicht gibt; es gibt ${known.join(', ')}`,
  'patch-without-fabric': ({ patch }) => `hat keinen Stoff für ${patch}; gib einen an`,
  'size-not-above-zero': ({ value }) => `${is(value)}; gib eine Breite und eine Höhe über null an`,
  'name-quilt': 'den Quilt umbenennen',
  'put-in-places': ({ places }) => (places === 1 ? 'einen Platz belegen' : 'Plätze belegen'),
  'swap-places': 'zwei Plätze tauschen',
  'move-place': 'auf einen anderen Platz legen',
  'turn-places': ({ places }) => (places === 1 ? 'einen Block drehen' : 'Blöcke drehen'),
  'resize-place': 'die Größe eines Platzes ändern',
  'clear-places': ({ places }) => (places === 1 ? 'einen Platz leeren' : 'Plätze leeren'),
  'press-places': ({ places }) => (places === 1 ? 'einen Block andersherum bügeln' : 'Blöcke andersherum bügeln'),
  'hold-places': ({ places }) => (places === 1 ? 'einen Platz festhalten' : 'Plätze festhalten'),
  'frame-places': ({ places }) => (places === 1 ? 'den Rahmen eines Platzes ändern' : 'Rahmen ändern'),
  'tick-places': ({ places }) => (places === 1 ? 'einen Platz abhaken' : 'Plätze abhaken'),
  'set-frame': 'den Rahmen aller Plätze ändern',
  'set-quilt-grid': 'die Anzahl der Plätze ändern',
  'set-place-size': 'die Größe der Plätze ändern',
  'set-joining': 'die Art des Verbindens ändern',
  'set-sashing': 'die Zwischenstreifen ändern',
  'take-turns': 'drehen und bügeln, damit die Blöcke ineinandergreifen',
  'set-parts': 'die Teile für einen Kurs ändern',
  'wear-fabric': 'den Stoff eines Blocks ändern',
  'update-block': 'einen Block auf den neuesten Stand bringen',
  'remove-block': 'einen Block aus dem Quilt löschen',
  'positions-empty': 'Dieser Platz ist leer. Leg einen Block oder ein einfaches Stück hin.',
  'positions-overlap': 'Diese Plätze überlappen sich. Verschieb einen davon.',
  'position-outside': 'Dieser Platz liegt außerhalb des Quilts. Schieb ihn hinein, oder mach den Quilt größer.',
  'block-too-large': 'Der Block ist zu groß für seinen Platz. Mach den Platz größer oder die Rahmenstreifen schmaler.',
  'block-too-small': 'Der Block braucht Rahmenstreifen, um seinen Platz zu füllen. Lass die letzten nehmen, was übrig ist.',
  'no-straight-order':
    'Diese Plätze lassen sich nicht mit geraden Nähten verbinden, und andere kann Nestwright für einen Quilt nicht planen. Ordne sie anders an.',
  'points-hidden': 'Was über der Kante liegt, verdeckt dort Spitzen. Rahme diese Blöcke.',
  'sash-wide': 'Die Zwischenstreifen sind breiter als ein Viertel des Blocks. Schmalere lassen die Blöcke besser wirken.',
  'in-block': ({ block, says }) => `${block}: ${say(germanMessages, says)}`,
  'fronts-apart': 'Streifen oder Kanten halten die Blöcke auseinander, also treffen keine Nähte zweier Blöcke aufeinander.',
  'fronts-nest': 'Alle Nähte benachbarter Blöcke liegen versetzt.',
  'fronts-proved': ({ clashes }) =>
    `${clashes === 1 ? 'Eine Kreuzung' : `${clashes} Kreuzungen`} zwischen Blöcken ${clashes === 1 ? 'passt' : 'passen'} nicht ineinander, wie auch immer gebügelt wird.`,
  'fronts-searched': ({ clashes, atLeast }) =>
    `${clashes === 1 ? 'Eine Kreuzung' : `${clashes} Kreuzungen`} zwischen Blöcken ${clashes === 1 ? 'passt' : 'passen'} nicht ineinander. Mindestens ${atLeast} bleiben; nicht alles wurde versucht.`,
  'quilt-chapter': ({ chapter }) => QUILT_CHAPTERS[chapter],
  'quilt-block-chapter': ({ block, count }) => `${block}: ${count} nähen`,
  'quilt-frame': ({ block, positions }) => `${block} einrahmen: ${positionsWords(positions)}`,
  'quilt-layer': ({ positions }) => `${positionsWords(positions)}: Lagen legen`,
  'quilt-positions': ({ positions }) => `${positionsWords(positions)} quilten`,
  'quilt-press-other': ({ positions }) => `Für ${positionsWords(positions)} andersherum bügeln`,
  'quilt-join': ({ sides: [one, other] }) => `${positionsWords(one)} mit ${positionsWords(other)} verbinden`,
  'quilt-finish': ({ step }) => QUILT_FINISHES[step],
  'cut-for-quilt': ({ part, each }) => `${QUILT_CUTS[part]}${each > 1 ? `; für jeden langen ${each} aneinandernähen` : ''}`,
  'press-position': ({ column, row, press }) =>
    `Bügle den Block in Spalte ${column}, Reihe ${row} ${press === 'opposite' ? 'andersherum' : 'wie geplant'}.`,
  'press-position-seam': ({ column, row }) => `Bügle im Block in Spalte ${column}, Reihe ${row} die Naht, die hier endet, andersherum.`,
  'turn-position': ({ column, row, quarters }) => `Dreh den Block in Spalte ${column}, Reihe ${row} ${QUARTERS[quarters]}.`,
  'unknown-block': ({ value }) => `nennt den Block ${found(value)}, der nicht in der Liste der Blöcke steht; nimm ihn auf, oder nimm einen anderen`,
  'unknown-place': ({ value }) => `nennt den Platz ${found(value)}, der nicht in der Liste der Plätze steht; nimm ihn auf, oder nimm einen anderen`,
  'unknown-worn': 'ist kein Stoff dieses Blocks; nenne einen Stoff, den der Block verwendet',
  'block-or-plain': 'braucht einen Block oder einen einfarbigen Stoff: gib eins von beiden an, nicht beides',
  'another-measure': 'ist nicht die Maßeinheit des Quilts; nimm überall dieselbe',
  'another-seam': 'ist nicht die Nahtzugabe des Quilts; nimm überall dieselbe',
  'length-below-zero': ({ value }) => `${is(value)}; gib 0 oder mehr an`,
  'borders-need-whole': 'gehören um ein Top, das im Ganzen gequiltet wird; bei fertig gequilteten Blöcken nimm Rahmenstreifen',
  'round-without-width': 'fehlt; nur der letzte Rahmenstreifen darf seine Breite weglassen',
  'not-whole-cells': ({ value, least }) => `${is(value)}; gib zwei ganze Zahlen an${least > 0 ? ', jede mindestens 1' : ''}`,
  'not-turn': ({ value }) => `${is(value)}; gib Vierteldrehungen im Uhrzeigersinn an: 0, 1, 2 oder 3`,
  'not-square': ({ value, kind }) => `${is(value)}; ${kind} ist quadratisch, gib gleiche Breite und Höhe an`,
  'not-goose': ({ value }) => `${is(value)}; eine Gans ist doppelt so breit wie hoch, bevor sie gedreht wird`,
  'corner-not-above-zero': ({ value }) => `${is(value)}; gib den Schenkel der gekappten Ecken in Kästchen an, über null`,
  'corners-overlap': ({ value }) => `${is(value)}, sodass die gekappten Ecken sich überlappen; gib einen kürzeren Schenkel an`,
  'corners-leave-no-centre': ({ value }) => `${is(value)}, sodass von der Mitte nichts bleibt; gib einen kürzeren Schenkel an`,
  'too-few-corners': ({ count }) => `hat ${count} Ecken; ein Stück braucht mindestens drei`,
  'too-many-corners': ({ count, most }) => `hat ${count} Ecken; ein Stück hat höchstens ${most}`,
  'crossed-outline': 'kreuzen oder berühren sich, oder lassen keinen Stoff; zeichne den Umriss einmal herum, ohne ihn zu kreuzen',
  'no-copied-units': 'das Kopierte enthält keine Einheiten; kopiere zuerst Einheiten auf der Arbeitsfläche',
  'newer-copied-units': 'diese Einheiten wurden aus einem neueren Nestwright kopiert; öffne den Block mit einem neueren',
  'other-blocks-format': ({ format }) => `ist nicht "${format}"; öffne eine Datei, in der Nestwright Blöcke gespeichert hat`,
  'blocks-version': 'ist nicht 1; gib 1 an',
  'blocks-list': 'ist keine Liste; gib eine Liste in eckigen Klammern an',
  'blocks-entry': 'ist kein Block; gib ein Objekt in geschweiften Klammern an',
  'blocks-id': 'ist keine Kennung; gib 1 bis 64 Buchstaben, Ziffern, ".", "_" oder "-" an',
  'blocks-time': 'ist keine Zeit; gib Millisekunden seit 1970 an',
  'blocks-copy': 'ist keine Fassung; gib ein Objekt in geschweiften Klammern an',
  'blocks-copy-name': 'ist kein Name; gib einen Namen in Anführungszeichen an, oder null',

  unit: ({ place, dative }) => unitInGerman(place, dative === true ? 'dative' : 'other'),
  'unit-label': ({ place }) => unitLabelInGerman(place),

  'place-units': ({ units }) => (units === 1 ? 'eine Einheit legen' : 'Einheiten legen'),
  'swap-units': 'zwei Einheiten tauschen',
  'align-units': 'Einheiten ausrichten',
  'spread-units': 'Einheiten gleichmäßig verteilen',
  'resize-units': ({ units }) => (units === 1 ? 'die Größe einer Einheit ändern' : 'die Größe von Einheiten ändern'),
  'replace-units': ({ units }) => (units === 1 ? 'eine Einheit ersetzen' : 'Einheiten ersetzen'),
  'move-units': ({ units }) => (units === 1 ? 'eine Einheit verschieben' : 'Einheiten verschieben'),
  'copy-units': ({ units }) => (units === 1 ? 'eine Einheit kopieren' : 'Einheiten kopieren'),
  'remove-units': ({ units }) => (units === 1 ? 'eine Einheit löschen' : 'Einheiten löschen'),
  'turn-units': ({ units }) => (units === 1 ? 'eine Einheit drehen' : 'Einheiten drehen'),
  'turn-units-half-round': 'Einheiten um 180° drehen',
  'mirror-units': ({ units }) => (units === 1 ? 'eine Einheit spiegeln' : 'Einheiten spiegeln'),
  'paste-units': ({ units }) => (units === 1 ? 'eine Einheit einsetzen' : 'Einheiten einsetzen'),
  'turn-block': 'den Block drehen',
  'mirror-block': 'den Block spiegeln',
  'join-shapes': 'Formen verbinden',
  'cut-shapes': 'Formen ausschneiden',
  'recolour-patches': ({ patches }) => (patches === 1 ? 'ein Teil umfärben' : 'Teile umfärben'),
  'recolour-wings': 'die Flügel von Gänsen färben',
  'recolour-fabric-everywhere': 'einen Stoff überall umfärben',
  'add-fabrics': ({ fabrics }) => (fabrics === 1 ? 'einen Stoff hinzufügen' : 'Stoffe hinzufügen'),
  'change-fabric': 'einen Stoff ändern',
  'remove-fabric': 'einen Stoff löschen',
  'move-fabric-up': 'einen Stoff nach oben rücken',
  'move-fabric-down': 'einen Stoff nach unten rücken',
  'swap-fabrics': 'zwei Stoffe tauschen',
  'make-fabric-plain': 'einen Stoff einfarbig machen',
  'choose-print': 'einen Druck wählen',
  'recolour-print': 'einen Druck färben',
  'set-print-direction': 'die Druckrichtung einstellen',
  'recolour-fabrics': 'die Stoffe umfärben',
  'take-colouring': 'eine Färbung übernehmen',
  'recolour-alike-patches': 'gleiche Teile umfärben',
  'set-method': 'eine Methode wählen',
  'set-methods': 'Methoden wählen',
  'cut-as-needed': 'keine Zugabe zum Trimmen',
  'cut-larger': 'Zugabe zum Trimmen',
  'set-order': 'die Nähreihenfolge wählen',
  'name-block': 'den Block benennen',
  'set-measure': 'die Maßeinheit ändern',
  'set-strip-count': ({ strips }) => `${strips} Streifen machen`,
  'separate-strips': 'Streifen trennen',
  'set-seam': 'die Nahtzugabe ändern',
  'set-finished-size': 'das fertige Maß ändern',
  'set-grid': 'das Raster ändern',
  'set-borders': 'die Ränder ändern',
  'set-cloth-width': 'die Stoffbreite ändern',
  'press-seam-open': 'eine Naht auseinanderbügeln',
  'press-seam': 'eine Naht auf deine Art bügeln',
  'press-as-proposed': ({ seams }) => (seams === 1 ? 'eine Naht wie vorgeschlagen bügeln' : 'Nähte wie vorgeschlagen bügeln'),
  'press-row': ({ line, number, way }) => `${LINES[line]} ${number} ${PRESSED_WAYS[way]} bügeln`,
  'forget-press': 'deine Bügelrichtung löschen',
  'press-units-alike': 'gleiche Einheiten gleich bügeln',
  'press-units-apart': 'jede Einheit für sich bügeln',
  'lift-press-rule': 'eine Einheit auf deine Art bügeln',
  'keep-press-rule': 'eine Einheit nach der Methode bügeln',
  'press-unit-open': 'die Nähte einer Einheit auseinanderbügeln',
  'press-unit-to-one-side': 'die Nähte einer Einheit auf eine Seite bügeln',
  'set-quilting-start': 'das Quilten woanders beginnen',
  'set-fill': 'Teile mit Quiltlinien füllen',
  'set-fill-spacing': 'den Abstand der Quiltlinien ändern',
  'title-booklet': 'dem Heft einen Titel geben',
  'sign-booklet': 'deinen Namen ins Heft setzen',
  'introduce-booklet': 'die Einleitung schreiben',
  'set-booklet-blocks': 'Zahl der Blöcke ändern',
  'change-step-words': 'den Text eines Schritts ändern',
  'keep-step-words': 'den Text eines Schritts behalten',
  'restore-step-words': 'den Originaltext eines Schritts wiederherstellen',
  'note-step': 'eine Notiz zu einem Schritt schreiben',
  'add-step-photograph': 'ein Foto zu einem Schritt hinzufügen',
  'remove-step-photograph': 'ein Foto eines Schritts löschen',
  'drop-step-words': 'den Text eines Schritts löschen, den es nicht mehr gibt',
  'begin-again': 'neu beginnen',
  'go-back-to-version': 'zu einer Fassung zurückgehen',
  'go-back-to-layout': 'zum Plan zurückgehen',

  'move-turn-block': ({ quarters }) => `Dreh den ganzen Block ${QUARTERS[quarters]}.`,
  'move-turn': ({ unit, quarters }) => `Dreh ${unitInGerman(unit)} ${QUARTERS[quarters]}.`,
  'move-swap': ({ units: [one, other] }) => `Tausch ${unitInGerman(one)} und ${unitInGerman(other)}, beide gedreht wie geplant.`,
  'move-sew-mirrored': ({ unit }) => `Näh ${unitInGerman(unit)} neu: Hier liegt das Spiegelbild.`,
  'move-sew': ({ unit }) => `Näh ${unitInGerman(unit)} neu: Im Block gibt es keine solche Einheit.`,
  'unit-missing': ({ unit }) => `Hier fehlt ${unitInGerman(unit)}.`,
  'unit-turned': ({ unit, quarters }) => `${capital(unitInGerman(unit))} ist gedreht: ${QUARTERS[quarters]} drehen, dann passt alles zum Plan.`,
  'unit-mirrored': ({ unit }) => `${capital(unitInGerman(unit))} ist spiegelverkehrt.`,
  'unit-swapped': ({ unit }) => `Hier gehört ${unitInGerman(unit)} hin, liegt aber anderswo.`,
  'unit-other': ({ unit }) => `Hier gehört ${unitInGerman(unit)} hin, fehlt aber im Block.`,

  'cut-for-borders': 'Ränder',
  'cut-for-border-corners': 'Randecken',
  'cut-for-units': ({ kinds, method, larger, measure }) => {
    const what =
      kinds.length === 0
        ? 'Einheiten'
        : kinds.map((noun) => (noun === 'square' ? 'Quadrate' : noun === 'rectangle' ? 'Rechtecke' : GERMAN_KINDS[noun])).join(' und ')
    const how = method === 'plain' ? '' : `, ${GERMAN_METHODS[method]}`
    return `${what}${how}${larger.map((by) => `, ${sayLength(by, measure)} ${measure} größer geschnitten, dann getrimmt`).join('')}`
  },
  'batches-of-geese': ({ batches, geese, spare }) => {
    const left = spare === 0 ? '' : `; ${inWords(spare, 'eine Gans bleibt', 'Gänse bleiben')} übrig`
    return `${capital(inWords(batches, 'ein Satz', 'Sätze'))} zu vieren ${batches === 1 ? 'ergibt' : 'ergeben'} ${geese === 1 ? 'deine Gans' : 'alle deine Gänse'}${left}.`
  },
  'geese-listed': ({ geese }) => geeseWords(geese),
  'batch-makes': ({ geese }) => `Ergibt ${geeseWords(geese)}.`,
  'geese-to-keep': ({ geese }) => `Behalte ${geeseWords(geese)}; der Rest bleibt übrig.`,
  'measure-before-borders':
    'Miss den Block durch die Mitte, nicht an den Kanten, bevor du die Streifen auf Länge schneidest; oder nimm den Durchschnitt aus drei Messungen. Zuerst die Seiten; miss neu für oben und unten.',
  batting: ({ batting }) => BATTINGS[batting],
  'batting-size': ({ size }) => BATTING_SIZES[size],
  'chart-piece': ({ piece }) => CHART_PIECES[piece],

  'cloth-missing': 'Hier ist noch Platz. Leg etwas hin.',
  'units-overlap': 'Diese Teile überlappen sich. Verschieb eins davon.',
  'cloth-outside': 'Dieses Teil liegt außerhalb des Rasters. Schieb es hinein, oder mach das Raster größer.',
  'hourglass-pairs-differ':
    'Sanduhren, zwei auf einmal, brauchen auf beiden Seiten der langen Naht dieselben zwei Stoffe. Färb sie um, oder näh sie klassisch.',
  'strip-set-too-long': 'Diese Streifen sind länger, als der Stoff breit ist. Schneide sie einzeln: Näh sie klassisch.',
  'hourglass-hands': ({ most, all }) =>
    `Zwei Quadrate ergeben eine Sanduhr und ihr Spiegelbild. Hier sind ${most} von ${all} gleich herum. Dreh oder spiegle einige, sonst laufen ihre langen Nähte andersherum.`,
  'bias-at-edge': 'Diese Dreiecke haben Schrägkanten außen am Block. Fass sie vorsichtig an, oder setz einen Rand an.',
  'not-trimmed': ({ method }) =>
    `${method === 'corner-flip' ? 'Genähte und umgeklappte Einheiten' : method === 'strip-set' ? 'Einheiten aus einem Streifensatz' : 'Klassisch genähte Einheiten'} werden nicht getrimmt, also gibt es keine Zugabe.`,
  'grain-at-edge': 'Diese Freistücke haben eine Kante außen am Block. Schneide sie im Fadenlauf, damit sie sich nicht dehnt.',
  'print-turned': ({ fabrics, how, units, of, named }) => {
    const where = units < of ? `in ${units} von ${of} Einheiten` : units === 1 ? 'in dieser Einheit' : 'in diesen Einheiten'
    return `Der Druck von ${fabrics.join(' und ')} liegt ${where} ${how === 'slanting' ? 'schräg' : 'gedreht'}${named.length === 0 ? '' : ` (${named.map((place) => unitInGerman(place)).join(', ')})`}.`
  },
  'print-turned-to-fit': ({ fabric, size: [across, along], measure }) =>
    `Ein Teil aus ${fabric}, ${sayLength(across, measure)} × ${sayLength(along, measure)} ${measure}, ist länger, als der Stoff breit ist. Schneide es längs: Sein Druck liegt dann um ein Viertel gedreht.`,
  'piece-too-large': ({ fabric, size }) =>
    `Ein Teil aus ${fabric}, ${size[0]} × ${size[1]}, ist zu groß für den Stoff. Teil es, oder nimm breiteren Stoff.`,
  'seam-partial': 'Das ist eine Teilnaht: Näh jetzt ein Stück, und den Rest, wenn die Nachbarn angenäht sind.',
  'seam-set-in': 'Hier wird ein Teil eingesetzt: Halte an der Ecke mit der Nadel im Stoff an, und dreh.',
  'press-not-kept': ({ reason }) => `Deine Bügelrichtung hier gilt nicht: ${NOT_KEPT[reason]}.`,
  'press-alike-differs': 'Gleiche Einheiten sollen gleich gebügelt werden, aber diese sind verschieden festgelegt. Jede bleibt, wie sie ist.',
  'method-needs-pairs': 'Sie braucht auf beiden Seiten der langen Naht dieselben zwei Stoffe.',
  'method-strips-too-long': 'Die Streifen sind länger, als der Stoff breit ist.',
  'not-worked-out': ({ error }) => `Mit dieser Anordnung ging etwas schief (${error}). Mach die letzte Änderung rückgängig.`,
  'findings-follow': 'Rechne … Das ist ein großer Block; du kannst inzwischen weitermachen.',
  'program-error': ({ error }) => error,

  'asked-for-seam': 'Du wolltest es so.',
  'asked-for-unit': 'Du wolltest die Nähte dieser Einheit auseinandergebügelt haben.',
  'geese-rule': 'Gänse, vier auf einmal gemacht, werden zu den Flügeln gebügelt.',
  'corner-rule': 'Umgeklappte Ecken werden zur Ecke gebügelt.',
  'less-bulk': 'Zur Seite mit weniger Nähten, damit es flacher wird.',
  'darker-side': 'Zum dunkleren Stoff.',
  'both-sides-alike': 'Egal wie: Beide Seiten sind gleich.',
  'like-alike-units': 'Wie die gleichen Einheiten.',
  'so-that-it-nests': 'Damit die Nähte ineinandergreifen.',
  'either-way': 'Beides geht.',

  'press-line': ({ line, number, how }) => `${LINES[line]} ${number}: ${pressedInGerman(how, LINES[line])}`,
  'press-between': ({ line, how }) => `Zwischen den ${LINES[line]}n: ${pressedInGerman(how, LINES[line])}`,
  'lines-alternate': ({ line }) =>
    `Jede ${LINES[line]} wird andersherum gebügelt als die nächste, damit ihre Nähte ineinandergreifen, wo sie sich treffen.`,

  'nothing-sewn': 'Füll zuerst die Lücken, und löse die Überlappungen.',
  'all-nest': 'Alle Nahtkreuzungen greifen ineinander: nichts zu tun.',
  'chains-must-clash': ({ chains }) => `${chains.map(chainWords).join('. ')}. Mit dieser Nähreihenfolge geht es nicht besser.`,
  'alike-all-weighed': ({ choices, atLeast }) =>
    `${alikeChoices(choices)} Alle wurden probiert: Mindestens ${atLeast} ${atLeast === 1 ? 'Kreuzung kann' : 'Kreuzungen können'} nicht ineinandergreifen.`,
  'alike-best-found': ({ choices, atLeast }) =>
    `${alikeChoices(choices)} Das sind zu viele, um alle zu probieren. Das ist die beste gefundene; mindestens ${atLeast} ${atLeast === 1 ? 'Kreuzung kann' : 'Kreuzungen können'} nicht ineinandergreifen.`,

  'lift-rule': ({ unit }) => `Bügle ${unitInGerman(unit)} andersherum.`,
  'press-other-way': 'Bügle diese Naht andersherum.',
  'press-open': 'Bügle diese Naht auseinander.',
  'join-by-order': ({ order, all }) => `Näh nach ${ORDERS[order]}: Dann ${all ? 'greifen alle Kreuzungen' : 'greift diese Kreuzung'} ineinander.`,
  'sew-turned': ({ unit }) => `Dreh ${unitInGerman(unit)}: Es sieht gleich aus, nur die Nähte laufen andersherum.`,
  'sew-mirrored': ({ unit }) => `Spiegle ${unitInGerman(unit)}: Es sieht gleich aus, nur die Nähte laufen andersherum.`,

  'quarter-turn-not-square': 'eine Vierteldrehung braucht einen quadratischen Block; nimm „keine“ oder „frei“',
  'copies-nest': 'Alle Kreuzungen zwischen den Blöcken greifen ineinander.',
  'copies-clash': ({ clashes }) =>
    clashes === 1 ? 'Eine Kreuzung zwischen Blöcken greift nicht ineinander.' : `${clashes} Kreuzungen zwischen Blöcken greifen nicht ineinander.`,
  'copies-clash-through': ({ clashes }) =>
    `${clashes === 1 ? 'Eine davon ist eine Naht, die quer durch den Block läuft und an beiden Enden gleich gebügelt ist' : `${clashes} davon sind Nähte, die quer durch den Block laufen und an beiden Enden gleich gebügelt sind`}. Dreh jeden zweiten Block, oder bügle ihn andersherum.`,
  'copies-clash-by-rule': ({ clashes }) =>
    `Manche Nähte müssen in eine Richtung, weil die Einheit so gemacht wird. Würde jeder zweite Block die andersherum bügeln, ${clashes === 0 ? 'griffe alles ineinander' : clashes === 1 ? 'griffe nur eine Kreuzung nicht ineinander' : `griffen ${clashes} Kreuzungen nicht ineinander`}.`,
  'copies-searched-in-bands': ({ atLeast }) =>
    `Es sind zu viele Möglichkeiten, um alle zu probieren: Mindestens ${atLeast} greifen nicht ineinander, vielleicht mehr.`,
  'copies-pressing-proved': 'Mit diesen Drehungen geht es nicht besser: Alles wurde probiert.',
  'copies-proved': 'Besser lassen sich die Blöcke nicht drehen und bügeln: Alles wurde probiert.',
  'clashes-inside': ({ clashes }) =>
    `Im Inneren jedes Blocks ${clashes === 1 ? 'greift noch eine Kreuzung' : `greifen noch ${clashes} Kreuzungen`} nicht ineinander.`,
  'rule-of-thumb': ({ units, outcome }) => {
    const rule =
      units % 2 === 0
        ? `Die Faustregel für eine gerade Zahl von Einheiten je Seite (hier ${units}) ist, alle Blöcke gleich zu bügeln.`
        : `Die Faustregel für eine ungerade Zahl von Einheiten je Seite (hier ${units}) ist, jeden zweiten Block andersherum zu bügeln.`
    if (outcome === 'as-said') return rule
    return outcome === 'nests-without'
      ? `${rule} Hier greift alles ohne sie ineinander.`
      : `${rule} Das hilft den kurzen Nähten; die anderen greifen trotzdem nicht ineinander.`
  },
}

/** German for what the geometry says. It is loaded when German is chosen. */
import { sayLength } from '../exact/lengths.ts'
import type { Kind, Method } from '../values/block.ts'
import type { BattingId, BattingSize, ChartPieceId, ClashingChain, FoundValue, GeeseOfWings, PressNotKept } from '../values/messages.ts'
import { unitInGerman, unitLabelInGerman } from './unitGerman.ts'
import { PRESSED_WAYS, pressedInGerman } from './pressGerman.ts'
import type { Words } from './words.ts'

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

const KINDS: Readonly<Record<Kind, string>> = {
  square: 'einfache Stücke',
  hst: 'Dreiecke aus halben Quadraten',
  hourglass: 'Sanduhren',
  goose: 'Gänse',
  diamond: 'Quadrate in Quadraten',
  cornered: 'Stücke mit gekappten Ecken',
  strips: 'Streifeneinheiten',
  'half-rectangle': 'halbe Rechtecke',
  polygon: 'freie Stücke',
}

const METHODS: Readonly<Record<Method, string>> = {
  plain: 'genäht wie geschnitten',
  'hst-2': 'zwei auf einmal',
  'hst-4': 'vier auf einmal, Kanten im schrägen Fadenlauf',
  'hst-8': 'acht auf einmal',
  'qst-2': 'zwei auf einmal',
  'geese-4': 'vier auf einmal',
  'corner-flip': 'umgeklappte Ecken',
  'strip-set': 'aus einem Streifensatz',
}

const QUARTERS = ['gar nicht', 'ein Viertel nach rechts', 'halb herum', 'ein Viertel nach links'] as const

const BATTINGS: Readonly<Record<BattingId, string>> = {
  'cotton-scrim': 'Baumwolle, genadelt, mit Gitter',
  'cotton-needled': 'Baumwolle, genadelt',
  bamboo: 'Bambus und Baumwolle',
  'cotton-natural': 'Baumwolle, natur, dünn',
  wool: 'Wolle',
  'polyester-thick': 'Polyester, dick',
  'cotton-no-scrim': 'Baumwolle, alter Art, ohne Gitter',
  'cotton-bleached': 'Baumwolle, gebleicht, ungebunden',
  'in-use': 'Jedes, für einen Quilt in Gebrauch',
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
  'later-word': 'ein späteres Wort von dir bügelt dieselbe Naht anders',
}

const ORDERS = { rows: 'Reihen', columns: 'Spalten', sections: 'Abschnitten' } as const

const alikeChoices = (choices: number): string =>
  `Gleiche Einheiten werden gleich gebügelt, also wenden sich ihre Nähte gemeinsam: ${choices === 1 ? 'Eine Wahl bleibt' : `${choices} Wahlen bleiben`}.`

function chainWords({ joins, length, settled, clashes }: ClashingChain): string {
  const named = joins.length === length ? `Die Nähte ${joins.join(', ')}` : `${length} Nähte ab ${joins[0]}`
  const cause = settled > 0 ? `${settled} von ihnen sind durch ihre Methode oder durch dich festgelegt` : 'einmal herum gehen die Wechsel nicht auf'
  return `${named} entscheiden je die nächste: ${cause}, also muss mindestens ${clashes === 1 ? 'ein Zusammenstoß' : `${clashes} Zusammenstöße`} bleiben`
}

export const germanMessages: Words = {
  'not-json': 'das ist keine Blockdatei: Es ist kein JSON; wähle eine Datei, die Nestwright gesichert hat',
  'other-format': ({ value }) => `${is(value)}; eine Blockdatei sagt "nestwright.block"`,
  'newer-version': ({ version }) => `ist ${version}, neuer, als dieses Nestwright liest; öffne sie mit einem neueren`,
  'other-version': ({ value }) => `${is(value)}; gib 1 an`,
  'not-object': ({ value }) => `${is(value)}; gib ein Objekt in geschweiften Klammern an`,
  'not-list': ({ value }) => `${is(value)}; gib eine Liste in eckigen Klammern an`,
  'not-one-of': ({ value, known }) => `${is(value)}; gib eines von diesen an: ${known.join(', ')}`,
  'not-flag': ({ value }) => `${is(value)}; gib true oder false an`,
  'too-deep': ({ most }) =>
    `enthält Listen oder Objekte, die mehr als ${most} tief ineinander liegen; wähle eine Datei, die Nestwright gesichert hat`,
  'not-length': ({ value }) => `${is(value)}; gib eine Länge an, etwa 3 oder "2 1/2"`,
  'length-not-above-zero': ({ value }) => `${is(value)}; gib eine Länge über null an`,
  'length-beyond-rulers': ({ value }) => `${is(value)}, was kein Lineal zeigt; gib eine Länge an, etwa 3 oder "2 1/2"`,
  'not-measure': ({ value }) => `${is(value)}; gib "in" oder "cm" an`,
  'not-cell-count': ({ value, most }) => `${is(value)}; gib eine ganze Zahl von Feldern von 1 bis ${most} an`,
  'not-id': ({ value }) => `${is(value)}; gib 1 bis 64 Buchstaben, Ziffern, ".", "_" oder "-" an`,
  'id-taken': ({ value }) => `${is(value)}, was schon ein anderes hat; gib eine eigene Kennung`,
  'not-name': ({ value }) => `${is(value)}; gib einen Namen in Anführungszeichen an`,
  'name-too-long': ({ count, most }) => `hat ${count} Zeichen; gib einen Namen mit höchstens ${most} an`,
  'not-text': ({ value }) => `${is(value)}; gib Worte in Anführungszeichen an`,
  'text-too-long': ({ count, most }) => `hat ${count} Zeichen; gib höchstens ${most} an`,
  'not-colour': ({ value }) => `${is(value)}; gib eine Farbe als "#rrggbb" an`,
  'not-print-colour': ({ value }) => `${is(value)}; gib die Farbe des Aufdrucks als "#rrggbb" an`,
  'not-print-photo': ({ value, most }) => `${is(value)}; gib ein Foto als "data:image/jpeg;base64,…" mit höchstens ${most} Zeichen an`,
  'not-photograph': ({ value }) => `${is(value)}; gib ein Bild als "data:image/jpeg;base64,…" oder "data:image/png;base64,…" an`,
  'unknown-fabric': ({ value }) => `nennt den Stoff ${found(value)}, der nicht unter den Stoffen ist; nimm ihn dazu, oder nenne einen anderen`,
  'not-position': ({ value }) => `${is(value)}; gib Felder als Zahl oder als Bruch wie "1/3" an`,
  'position-too-far': ({ value, most }) => `${is(value)}; bleib innerhalb von ${most} Feldern`,
  'position-not-exact': ({ value }) =>
    `${is(value)}, was neben den anderen Lagen nicht genau gehalten werden kann; nimm einfachere Bruchteile eines Felds`,
  'not-pair': ({ value }) => `${is(value)}; gib zwei Zahlen in eckigen Klammern an`,
  'too-many-units': ({ count, most }) => `enthält ${count} Einheiten; ein Block hat höchstens ${most}`,
  'method-of-another-kind': ({ value, kind, known }) => `${is(value)}, was kein ${kind} macht; gib eines von diesen an: ${known.join(', ')}`,
  'too-many-patches': ({ count, most }) => `nennt ${count} Stücke; eine Einheit hat höchstens ${most}`,
  'strips-with-hole': ({ value }) => `nennt ${found(value)}; nummeriere die Streifen ab strip1 ohne Lücke`,
  'unknown-patch': ({ value, kind, known }) => `nennt ${found(value)}, was ein ${kind} nicht hat; es hat ${known.join(', ')}`,
  'patch-without-fabric': ({ patch }) => `sagt nicht, aus welchem Stoff ${patch} ist; nenne einen`,
  'size-not-above-zero': ({ value }) => `${is(value)}; gib eine Breite und eine Höhe über null an`,
  'not-turn': ({ value }) => `${is(value)}; gib Vierteldrehungen im Uhrzeigersinn an: 0, 1, 2 oder 3`,
  'not-square': ({ value, kind }) => `${is(value)}; ${kind} ist quadratisch, gib gleiche Breite und Höhe an`,
  'not-goose': ({ value }) => `${is(value)}; eine Gans ist doppelt so breit wie hoch, bevor sie gedreht wird`,
  'corner-not-above-zero': ({ value }) => `${is(value)}; gib den Schenkel der gekappten Ecken in Feldern an, über null`,
  'corners-overlap': ({ value }) => `${is(value)}, sodass die gekappten Ecken sich überlappen; gib einen kürzeren Schenkel an`,
  'corners-leave-no-centre': ({ value }) => `${is(value)}, sodass von der Mitte nichts bleibt; gib einen kürzeren Schenkel an`,
  'too-few-corners': ({ count }) => `hat ${count} Ecken; ein Stück braucht mindestens drei`,
  'too-many-corners': ({ count, most }) => `hat ${count} Ecken; ein Stück hat höchstens ${most}`,
  'crossed-outline': 'kreuzen oder berühren sich, oder lassen keinen Stoff; zeichne den Umriss einmal herum, ohne ihn zu kreuzen',
  'no-copied-units': 'das Kopierte enthält keine Einheiten; kopiere erst Einheiten auf einem Tisch',
  'newer-copied-units': 'diese Einheiten wurden aus einem neueren Nestwright kopiert; öffne den Block mit einem neueren',
  'other-blocks-format': ({ format }) => `ist nicht "${format}"; wähle eine Datei, in der Nestwright Blöcke gesichert hat`,
  'blocks-version': 'ist nicht 1; gib 1 an',
  'blocks-list': 'ist keine Liste; gib eine Liste in eckigen Klammern an',
  'blocks-entry': 'ist kein Block; gib ein Objekt in geschweiften Klammern an',
  'blocks-id': 'ist keine Kennung; gib 1 bis 64 Buchstaben, Ziffern, ".", "_" oder "-" an',
  'blocks-time': 'ist keine Zeit; gib Millisekunden seit 1970 an',
  'blocks-copy': 'ist keine Fassung; gib ein Objekt in geschweiften Klammern an',
  'blocks-copy-name': 'ist kein Name; gib einen Namen in Anführungszeichen an, oder null',

  unit: ({ place, dative }) => unitInGerman(place, dative === true ? 'dative' : 'other'),
  'unit-label': ({ place }) => unitLabelInGerman(place),

  'place-units': ({ units }) => (units === 1 ? 'eine Einheit legen' : 'eine Folge von Einheiten legen'),
  'swap-units': 'zwei Einheiten die Plätze tauschen',
  'align-units': 'Einheiten ausrichten',
  'spread-units': 'Einheiten gleichmäßig verteilen',
  'resize-units': ({ units }) => (units === 1 ? 'die Größe einer Einheit ändern' : 'die Größe von Einheiten ändern'),
  'replace-units': ({ units }) => (units === 1 ? 'eine andere Einheit an die Stelle setzen' : 'andere Einheiten an die Stelle setzen'),
  'move-units': ({ units }) => (units === 1 ? 'eine Einheit verschieben' : 'Einheiten verschieben'),
  'copy-units': ({ units }) => (units === 1 ? 'eine Einheit kopieren' : 'Einheiten kopieren'),
  'remove-units': ({ units }) => (units === 1 ? 'eine Einheit entfernen' : 'Einheiten entfernen'),
  'turn-units': ({ units }) => (units === 1 ? 'eine Einheit drehen' : 'Einheiten drehen'),
  'turn-units-half-round': 'Einheiten halb herumdrehen',
  'mirror-units': ({ units }) => (units === 1 ? 'eine Einheit spiegeln' : 'Einheiten spiegeln'),
  'paste-units': ({ units }) => (units === 1 ? 'eine Einheit einsetzen' : 'Einheiten einsetzen'),
  'turn-block': 'den Block drehen',
  'mirror-block': 'den Block spiegeln',
  'join-shapes': 'Formen verbinden',
  'cut-shapes': 'Formen wegschneiden',
  'recolour-patches': ({ patches }) => (patches === 1 ? 'ein Stück umfärben' : 'Stücke umfärben'),
  'recolour-wings': 'die Flügel von Gänsen färben',
  'recolour-fabric-everywhere': 'jedes Stück eines Stoffs umfärben',
  'add-fabrics': ({ fabrics }) => (fabrics === 1 ? 'einen Stoff dazunehmen' : 'Stoffe dazunehmen'),
  'change-fabric': 'einen Stoff ändern',
  'remove-fabric': 'einen Stoff entfernen',
  'move-fabric-up': 'einen Stoff nach oben rücken',
  'move-fabric-down': 'einen Stoff nach unten rücken',
  'swap-fabrics': 'zwei Stoffe tauschen',
  'make-fabric-plain': 'einen Stoff einfarbig machen',
  'choose-print': 'einen Druck wählen',
  'recolour-print': 'einen Druck färben',
  'set-print-direction': 'sagen, wie ein Stoff gedreht werden darf',
  'recolour-fabrics': 'die Stoffe umfärben',
  'take-colouring': 'eine Färbung nehmen',
  'recolour-alike-patches': 'gleiche Stücke umfärben',
  'set-method': 'eine Methode wählen',
  'set-methods': 'Methoden wählen',
  'cut-as-needed': 'Einheiten schneiden wie nötig',
  'cut-larger': 'Einheiten etwas größer schneiden',
  'set-order': 'die Reihenfolge des Zusammennähens wählen',
  'name-block': 'den Block benennen',
  'set-measure': 'die Maßeinheit ändern',
  'set-seam': 'die Nahtzugabe ändern',
  'set-finished-size': 'das fertige Maß ändern',
  'set-grid': 'das Raster ändern',
  'set-borders': 'die Ränder ändern',
  'set-cloth-width': 'die Stoffbreite ändern',
  'press-seam-open': 'eine Naht auseinanderbügeln',
  'press-seam': 'eine Naht auf deine Art bügeln',
  'press-as-proposed': ({ seams }) => (seams === 1 ? 'eine Naht wie vorgeschlagen bügeln' : 'Nähte wie vorgeschlagen bügeln'),
  'press-row': ({ line, number, way }) => `${LINES[line]} ${number} ${PRESSED_WAYS[way]} bügeln`,
  'forget-press': 'eine Bügelrichtung vergessen',
  'press-units-alike': 'gleiche Einheiten gleich bügeln',
  'press-units-apart': 'jede Einheit für sich bügeln',
  'lift-press-rule': 'die Bügelregel einer Methode aufheben',
  'keep-press-rule': 'die Bügelregel einer Methode behalten',
  'press-unit-open': 'die Nähte einer Einheit auseinanderbügeln',
  'press-unit-to-one-side': 'die Nähte einer Einheit auf eine Seite bügeln',
  'title-booklet': 'das Heft betiteln',
  'sign-booklet': 'einen Namen auf das Heft setzen',
  'introduce-booklet': 'die Einleitung schreiben',
  'change-step-words': 'die Worte eines Schritts ändern',
  'keep-step-words': 'die Worte eines Schritts behalten',
  'restore-step-words': 'einen Schritt auf die Worte des Programms zurücksetzen',
  'note-step': 'eine Notiz zu einem Schritt schreiben',
  'add-step-photograph': 'ein Foto zu einem Schritt dazunehmen',
  'remove-step-photograph': 'ein Foto von einem Schritt nehmen',
  'drop-step-words': 'die Worte eines Schritts wegwerfen, der weg ist',
  'begin-again': 'neu beginnen',
  'go-back-to-version': 'zu einer Fassung zurückgehen',
  'go-back-to-layout': 'zum Ausgelegten zurückgehen',

  'move-turn-block': ({ quarters }) => `Dreh den ganzen Block: ${QUARTERS[quarters]}.`,
  'move-turn': ({ unit, quarters }) => `Dreh ${unit}: ${QUARTERS[quarters]}.`,
  'move-swap': ({ units: [one, other] }) => `Tausch die Einheiten bei ${one} und ${other}, jede gedreht, wie sie gelegt war.`,
  'move-sew-mirrored': ({ unit }) => `Näh ${unit} neu: Diese ist ihr Spiegelbild.`,
  'move-sew': ({ unit }) => `Näh ${unit} neu: Hier liegt keine solche Einheit.`,
  'unit-missing': ({ unit }) => `Hier liegt keine Einheit von der Größe von ${unit}.`,
  'unit-turned': ({ unit, quarters }) => `${unit} ist gedreht: Sie lag so dazu: ${QUARTERS[quarters]}.`,
  'unit-mirrored': ({ unit }) => `${unit} ist als ihr Spiegelbild herausgekommen.`,
  'unit-swapped': ({ unit }) => `Eine andere Einheit liegt, wo ${unit} lag; eine wie sie liegt anderswo.`,
  'unit-other': ({ unit }) => `Eine andere Einheit liegt, wo ${unit} lag, und keine wie sie irgendwo.`,

  'cut-for-borders': 'Ränder',
  'cut-for-border-corners': 'Ecken der Ränder',
  'cut-for-units': ({ kinds, method, larger, measure }) => {
    const what = kinds.length === 0 ? 'Einheiten' : kinds.map((kind) => KINDS[kind]).join(' und ')
    const how = method === 'plain' ? '' : `, ${METHODS[method]}`
    return `${what}${how}${larger.map((by) => `, ${sayLength(by, measure)} ${measure} größer geschnitten, um getrimmt zu werden`).join('')}`
  },
  'batches-of-geese': ({ batches, geese, spare }) => {
    const left = spare === 0 ? '' : `; ${inWords(spare, 'eine Gans bleibt', 'Gänse bleiben')} übrig`
    return `${capital(inWords(batches, 'ein Satz', 'Sätze'))} zu vieren ${batches === 1 ? 'ergibt' : 'ergeben'} ${geese === 1 ? 'deine Gans' : 'alle deine Gänse'}${left}.`
  },
  'geese-listed': ({ geese }) => geeseWords(geese),
  'batch-makes': ({ geese }) => `Ergibt ${geeseWords(geese)}.`,
  'geese-to-keep': ({ geese }) => `Behalte ${geeseWords(geese)}; der Rest bleibt übrig.`,
  'measure-before-borders':
    'Miss vor dem Schneiden das Genähte durch seine Mitte, nicht an den Kanten, und schneide beide Streifen eines Paars auf diese Länge; oder nimm das Mittel von drei Messungen. Zuerst die Seiten; miss neu für oben und unten.',
  batting: ({ batting }) => BATTINGS[batting],
  'batting-size': ({ size }) => BATTING_SIZES[size],
  'chart-piece': ({ piece }) => CHART_PIECES[piece],

  'cloth-missing': 'Hier ist kein Stoff; fülle die Lücke.',
  'units-overlap': 'Hier liegen Einheiten übereinander; verschiebe eine.',
  'cloth-outside': 'Hier liegt Stoff außerhalb des Rasters; rücke ihn herein, oder mach das Raster größer.',
  'hourglass-pairs-differ':
    'Sanduhren, zwei auf einmal, brauchen beiderseits der langen Naht dasselbe Stoffpaar; schneide einzelne Dreiecke, oder färbe sie um.',
  'strip-set-too-long': 'Diese Streifen sind länger, als der Stoff breit ist; schneide sie einzeln.',
  'hourglass-hands': ({ most, all }) =>
    `Zwei Quadrate geben je eine Sanduhr jeder Hand; ${most} von ${all} sind mit derselben Hand gezeichnet. Drehe oder spiegle einige, oder rechne damit, dass ihre langen Nähte andersherum laufen.`,
  'bias-at-edge': 'Die Außenkanten dieser Dreiecke liegen im schrägen Fadenlauf und am Rand des Blocks: Fass sie sanft an, oder setze einen Rand an.',
  'not-trimmed': ({ method }) =>
    `Was genäht wird wie geschnitten (${method === 'corner-flip' ? 'umgeklappte Ecken' : method === 'strip-set' ? 'ein Streifensatz' : 'einzelne Teile'}), wird nicht getrimmt: Es wird nicht größer geschnitten.`,
  'grain-at-edge':
    'Diese freien Stücke haben eine Seite außen am Block und andere in der Schräge: Leg jede Schablone, wie das Stück im Block liegt, damit seine Außenkante im Fadenlauf liegt.',
  'print-turned': ({ fabrics, how, units, of, named }) => {
    const where = units < of ? `${units} von ${of} Einheiten` : units === 1 ? 'diese Einheit' : 'diese Einheiten'
    return `Der Druck von ${fabrics.join(' und ')} wird ${how === 'slanting' ? 'schräg' : 'verdreht'} liegen: ${where}${named.length === 0 ? '' : ` (${named.join(', ')})`}.`
  },
  'print-turned-to-fit': ({ fabric, size: [across, along], measure }) =>
    `Der Druck von ${fabric} wird in einem Teil von ${sayLength(across, measure)} mal ${sayLength(along, measure)} ${measure} um ein Viertel gedreht liegen: Es ist breiter als der Stoff und wird längs geschnitten.`,
  'piece-too-large': ({ fabric, size }) =>
    `Ein Teil aus ${fabric}, ${size[0]} mal ${size[1]}, ist breiter und länger als der Stoff; teile es, oder nimm breiteren Stoff.`,
  'seam-partial': 'Diese Naht wird zuerst nur ein Stück weit genäht und beendet, wenn ihre Nachbarn angenäht sind.',
  'seam-set-in': 'Diese Naht knickt: Sie wird eingesetzt; halte am Knick mit der Nadel im Stoff an.',
  'press-not-kept': ({ reason }) => `Dein Wort zum Bügeln hier wurde übergangen: ${NOT_KEPT[reason]}.`,
  'press-alike-differs':
    'Gleiche Einheiten sollen gleich gebügelt werden, aber diese Naht und ihresgleichen sind verschieden festgelegt: Jede behält ihre Weise.',
  'method-needs-pairs': 'Sie braucht beiderseits der langen Naht dieselben zwei Stoffe.',
  'method-strips-too-long': 'Die Streifen sind länger, als der Stoff breit ist.',
  'not-worked-out': ({ error }) => `Diese Anordnung ließ sich nicht ausrechnen (${error}); nimm die letzte Änderung zurück.`,
  'findings-follow': 'Die Befunde eines so großen Blocks werden noch ausgerechnet; mach inzwischen weiter.',
  'program-error': ({ error }) => error,

  'asked-for-seam': 'Du hast es so verlangt.',
  'asked-for-unit': 'Du hast verlangt, die Nähte dieser Einheit auseinanderzubügeln.',
  'geese-rule': 'Gänse, vier auf einmal gemacht, werden zu ihren Flügeln hin gebügelt.',
  'corner-rule': 'Eine umgeklappte Ecke wird zur Ecke hin gebügelt.',
  'less-bulk': 'Weg von der Seite mit mehr Nähten, damit sich weniger Stoff türmt.',
  'darker-side': 'Zum dunkleren Stoff hin.',
  'both-sides-alike': 'Gleich wie herum: Beide Seiten sind gleich.',
  'like-alike-units': 'Gebügelt wie die anderen gleichen Einheiten.',
  'so-that-it-nests': 'Damit sie ineinandergreift, wo sie andere Nähte trifft.',
  'either-way': 'Beides geht.',

  'press-line': ({ line, number, how }) => `${LINES[line]} ${number}: ${pressedInGerman(how, LINES[line])}`,
  'press-between': ({ line, how }) => `Zwischen den ${LINES[line]}n: ${pressedInGerman(how, LINES[line])}`,
  'lines-alternate': ({ line }) =>
    `Jede ${LINES[line]} wird andersherum gebügelt als die nächste, damit ihre Nähte ineinandergreifen, wo sie sich treffen.`,

  'nothing-sewn': 'Nichts wird genäht, solange die Anordnung Lücken oder Überlappungen hat.',
  'all-nest': 'Jedes Nahtpaar, das sich trifft, greift ineinander, also gibt es nichts zu verringern.',
  'chains-must-clash': ({ chains }) =>
    `${chains.map(chainWords).join('. ')}. Alle anderen Nähte sind davon frei, also hat kein Bügeln dieser Nähte weniger.`,
  'alike-all-weighed': ({ choices, atLeast }) =>
    `${alikeChoices(choices)} Jede wurde gegen jede Lage derer gewogen, die sie trifft, und keine ausgelassen: Kein Bügeln hat weniger als ${atLeast}.`,
  'alike-best-found': ({ choices, atLeast }) =>
    `${alikeChoices(choices)} Es sind zu viele, um alle zu wägen: Dies ist das Beste, was gefunden wurde, und kein Bügeln hat weniger als ${atLeast}.`,

  'lift-rule': ({ unit }) => `Bügle die Nähte von ${unit} andersherum, wo es hilft: Hebe die Regel ihrer Methode auf.`,
  'press-other-way': 'Bügle diese Naht andersherum.',
  'press-open': 'Bügle diese Naht auseinander.',
  'join-by-order': ({ order, all }) =>
    `Näh zusammen nach ${ORDERS[order]}: Dann ${all ? 'greift jedes Treffen ineinander' : 'stößt dieses Treffen nicht zusammen'}.`,
  'sew-turned': ({ unit }) => `Näh ${unit} gedreht: Das Bild bleibt, ihre Nähte laufen andersherum.`,
  'sew-mirrored': ({ unit }) => `Näh ${unit} als ihr Spiegelbild: Das Bild bleibt, ihre Nähte laufen andersherum.`,

  'quarter-turn-not-square': 'eine Vierteldrehung braucht einen Block, der so breit wie hoch ist; wähle keine oder freie',
  'copies-nest': 'Jedes Nahtpaar, das sich zwischen Blöcken trifft, greift ineinander.',
  'copies-clash': ({ clashes }) =>
    clashes === 1 ? 'Ein Treffen zwischen Blöcken stößt zusammen.' : `${clashes} Treffen zwischen Blöcken stoßen zusammen.`,
  'copies-clash-through': ({ clashes }) =>
    `${clashes === 1 ? 'Eines davon ist eine Naht, die von Kante zu Kante durch den Block läuft und an beiden Enden gleich liegt' : `${clashes} davon sind Nähte, die von Kante zu Kante durch den Block laufen und an beiden Enden gleich liegen`}: Eine gleich gesetzte Kopie trifft sie gleich gebügelt. Drehe jeden zweiten Block, oder bügle ihn andersherum.`,
  'copies-clash-by-rule': ({ clashes }) =>
    `Manche sind Nähte, deren Lage eine Methode festlegt (Gänse zu ihren Flügeln, umgeklappte Ecken zur Ecke), also liegen beide Seiten gleich. Wären die jedes zweiten Blocks andersherum gebügelt, ${clashes === 0 ? 'stieße keine' : clashes === 1 ? 'stieße eine' : `stießen ${clashes}`} zusammen.`,
  'copies-searched-in-bands': ({ atLeast }) => `Die Wahl wurde Band für Band gesucht: Weniger als ${atLeast} sind nicht zu haben, vielleicht mehr.`,
  'copies-pressing-proved': 'Mit diesen Drehungen hat keine andere Wahl des Bügelns weniger: Alle wurden gewogen.',
  'copies-proved': 'Keine andere Wahl von Drehungen und Bügeln hat weniger: Alle wurden gewogen.',
  'clashes-inside': ({ clashes }) => `Jeder Block hat außerdem ${clashes === 1 ? 'einen eigenen Zusammenstoß' : `${clashes} eigene Zusammenstöße`}.`,
  'rule-of-thumb': ({ units, outcome }) => {
    const rule =
      units % 2 === 0
        ? `Die Faustregel für eine gerade Zahl von Einheiten je Seite (hier ${units}) ist, alle Blöcke gleich zu bügeln.`
        : `Die Faustregel für eine ungerade Zahl von Einheiten je Seite (hier ${units}) ist, jeden zweiten Block andersherum zu bügeln.`
    if (outcome === 'as-said') return rule
    return outcome === 'nests-without'
      ? `${rule} Hier greift alles ohne sie ineinander.`
      : `${rule} Sie spricht von den kurzen Nähten; die anderen stoßen trotzdem zusammen, also gilt die Zahl oben.`
  },
}

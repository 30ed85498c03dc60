/**
 * German for what the geometry says: reasons, findings, moves back, names of edits, and what is wrong with a file.
 *
 * Each key is the geometry's own sentence, with a place in braces for whatever it puts in; `tell` finds the entry by its shape.
 */
import type { Catalogue } from './catalogue.ts'

export const germanFindings: Catalogue = {
  'place a unit': 'eine Einheit legen',
  'lay a run of units': 'eine Folge von Einheiten legen',
  'change the places of two units': 'zwei Einheiten die Plätze tauschen',
  'align units': 'Einheiten ausrichten',
  'spread units evenly': 'Einheiten gleichmäßig verteilen',
  'resize a unit': 'die Größe einer Einheit ändern',
  'resize units': 'die Größe von Einheiten ändern',
  'put another unit in place': 'eine andere Einheit an die Stelle setzen',
  'put other units in place': 'andere Einheiten an die Stelle setzen',
  'move a unit': 'eine Einheit verschieben',
  'move units': 'Einheiten verschieben',
  'copy a unit': 'eine Einheit kopieren',
  'copy units': 'Einheiten kopieren',
  'remove a unit': 'eine Einheit entfernen',
  'remove units': 'Einheiten entfernen',
  'turn a unit': 'eine Einheit drehen',
  'turn units': 'Einheiten drehen',
  'turn units half round': 'Einheiten halb herumdrehen',
  'mirror a unit': 'eine Einheit spiegeln',
  'mirror units': 'Einheiten spiegeln',
  'paste a unit': 'eine Einheit einsetzen',
  'paste units': 'Einheiten einsetzen',
  'turn the block': 'den Block drehen',
  'mirror the block': 'den Block spiegeln',
  'recolour a patch': 'ein Stück umfärben',
  'recolour units': 'Einheiten umfärben',
  'colour the wings of geese': 'die Flügel von Gänsen färben',
  'recolour every patch of a fabric': 'jedes Stück eines Stoffs umfärben',
  'add a fabric': 'einen Stoff dazunehmen',
  'add fabrics': 'Stoffe dazunehmen',
  'change a fabric': 'einen Stoff ändern',
  'remove a fabric': 'einen Stoff entfernen',
  'choose a method': 'eine Methode wählen',
  'cut units as needed': 'Einheiten schneiden wie nötig',
  'cut units a little larger': 'Einheiten etwas größer schneiden',
  'choose the order of joining': 'die Reihenfolge des Zusammennähens wählen',
  'name the block': 'den Block benennen',
  'change the measure': 'das Maß ändern',
  'change the grid': 'das Raster ändern',
  'change the borders': 'die Ränder ändern',
  'change the width of the cloth': 'die Stoffbreite ändern',
  'press a seam open': 'eine Naht auseinanderbügeln',
  'press a seam to one side': 'eine Naht auf eine Seite bügeln',
  'take back a word on pressing': 'ein Wort zum Bügeln zurücknehmen',
  'press alike units alike': 'gleiche Einheiten gleich bügeln',
  'press each unit by itself': 'jede Einheit für sich bügeln',
  'lift a method’s pressing rule': 'die Bügelregel einer Methode aufheben',
  'keep a method’s pressing rule': 'die Bügelregel einer Methode behalten',
  'press a unit’s seams open': 'die Nähte einer Einheit auseinanderbügeln',
  'press a unit’s seams to one side': 'die Nähte einer Einheit auf eine Seite bügeln',
  'make a fabric plain': 'einen Stoff einfarbig machen',
  'choose a print': 'einen Druck wählen',
  'colour a print': 'einen Druck färben',
  'say how a cloth may be turned': 'sagen, wie ein Stoff gedreht werden darf',
  'move a fabric up': 'einen Stoff nach oben rücken',
  'move a fabric down': 'einen Stoff nach unten rücken',
  'exchange two fabrics': 'zwei Stoffe tauschen',
  'take a colouring': 'eine Färbung nehmen',
  'recolour the fabrics': 'die Stoffe umfärben',
  'title the booklet': 'das Heft betiteln',
  'put a name on the booklet': 'einen Namen auf das Heft setzen',
  'write the introduction': 'die Einleitung schreiben',
  'change the words of a step': 'die Worte eines Schritts ändern',
  'keep the words of a step': 'die Worte eines Schritts behalten',
  'put a step back to the program’s words': 'einen Schritt auf die Worte des Programms zurücksetzen',
  'write a note on a step': 'eine Notiz zu einem Schritt schreiben',
  'take a photograph off a step': 'ein Foto von einem Schritt nehmen',
  'add a photograph to a step': 'ein Foto zu einem Schritt dazunehmen',
  'throw away the words of a step that is gone': 'die Worte eines Schritts wegwerfen, der weg ist',
  'Turn the whole block {how}.': 'Dreh den ganzen Block: {how}.',
  'Turn {unit} {how}.': 'Dreh {unit}: {how}.',
  'not at all': 'gar nicht',
  'a quarter to the right': 'ein Viertel nach rechts',
  'half round': 'halb herum',
  'a quarter to the left': 'ein Viertel nach links',
  'Swap the units at {one} and {other}, each turned as it was laid.': 'Tausch die Einheiten bei {one} und {other}, jede gedreht, wie sie gelegt war.',
  'Sew {unit} anew: this one is its mirror image.': 'Näh {unit} neu: Diese ist ihr Spiegelbild.',
  'Sew {unit} anew: no such unit lies here.': 'Näh {unit} neu: Hier liegt keine solche Einheit.',
  'No unit of the size of {unit} lies here.': 'Hier liegt keine Einheit von der Größe von {unit}.',
  '{unit} is turned: it was laid {how} from this.': '{unit} ist gedreht: Sie lag so dazu: {how}.',
  '{unit} came out as its mirror image.': '{unit} ist als ihr Spiegelbild herausgekommen.',
  'Another unit lies where {unit} was laid; one like it lies elsewhere.': 'Eine andere Einheit liegt, wo {unit} lag; eine wie sie liegt anderswo.',
  'Another unit lies where {unit} was laid, and none like it anywhere.': 'Eine andere Einheit liegt, wo {unit} lag, und keine wie sie irgendwo.',
  'what was copied holds no units; copy units on a board first': 'das Kopierte enthält keine Einheiten; kopiere erst Einheiten auf einem Tisch',
  'these units were copied from a newer Nestwright; open the block with a newer one':
    'diese Einheiten wurden aus einem neueren Nestwright kopiert; öffne den Block mit einem neueren',
  'this is not a block file: it is not JSON; choose a file that Nestwright saved':
    'das ist keine Blockdatei: Es ist kein JSON; wähle eine Datei, die Nestwright gesichert hat',
  'is {value}; a block file says "nestwright.block"': 'ist {value}; eine Blockdatei sagt "nestwright.block"',
  'is {value}, newer than this Nestwright reads; open it with a newer one':
    'ist {value}, neuer, als dieses Nestwright liest; öffne sie mit einem neueren',
  'is {value}; give 1': 'ist {value}; gib 1 an',
  'is {value}; give the block a name in quotes': 'ist {value}; gib dem Block einen Namen in Anführungszeichen',
  'is {value}; give an object in braces': 'ist {value}; gib ein Objekt in geschweiften Klammern an',
  'is {value}; give a list in brackets': 'ist {value}; gib eine Liste in eckigen Klammern an',
  'is {value}; give one of {known}': 'ist {value}; gib eines von diesen an: {known}',
  'is {value}; give true or false': 'ist {value}; gib true oder false an',
  'is {value}; give a length such as 3 or "2 1/2"': 'ist {value}; gib eine Länge an, etwa 3 oder "2 1/2"',
  'is {value}; give a length above zero': 'ist {value}; gib eine Länge über null an',
  'is {value}, which no ruler shows; give a length such as 3 or "2 1/2"':
    'ist {value}, was kein Lineal zeigt; gib eine Länge an, etwa 3 oder "2 1/2"',
  'is {value}; give "in" or "cm"': 'ist {value}; gib "in" oder "cm" an',
  'is {value}; give a whole number of cells from 1 to {most}': 'ist {value}; gib eine ganze Zahl von Feldern von 1 bis {most} an',
  'is {value}; give 1 to 64 letters, digits, ".", "_" or "-"': 'ist {value}; gib 1 bis 64 Buchstaben, Ziffern, ".", "_" oder "-" an',
  'is {value}, which another one has already; give it an id of its own': 'ist {value}, was schon ein anderes hat; gib eine eigene Kennung',
  'is {value}; give a name in quotes': 'ist {value}; gib einen Namen in Anführungszeichen an',
  'is {value}; give a colour as "#rrggbb"': 'ist {value}; gib eine Farbe als "#rrggbb" an',
  'is {value}; give the colour of what is printed as "#rrggbb"': 'ist {value}; gib die Farbe des Aufdrucks als "#rrggbb" an',
  'is {value}; give a photograph as "data:image/jpeg;base64,…" of at most {most} characters':
    'ist {value}; gib ein Foto als "data:image/jpeg;base64,…" mit höchstens {most} Zeichen an',
  'names the fabric {value}, which is not among the fabrics; add it or name another':
    'nennt den Stoff {value}, der nicht unter den Stoffen ist; nimm ihn dazu, oder nenne einen anderen',
  'is {value}; give words in quotes': 'ist {value}; gib Worte in Anführungszeichen an',
  'is {value}; give a picture as "data:image/jpeg;base64,…" or "data:image/png;base64,…"':
    'ist {value}; gib ein Bild als "data:image/jpeg;base64,…" oder "data:image/png;base64,…" an',
  'is {value}; give cells as a number or as a fraction such as "1/3"': 'ist {value}; gib Felder als Zahl oder als Bruch wie "1/3" an',
  'is {value}; stay within {most} cells': 'ist {value}; bleib innerhalb von {most} Feldern',
  'is {value}, which cannot be held exactly beside the other positions; use simpler fractions of a cell':
    'ist {value}, was neben den anderen Lagen nicht genau gehalten werden kann; nimm einfachere Bruchteile eines Felds',
  'is {value}; give two numbers in brackets': 'ist {value}; gib zwei Zahlen in eckigen Klammern an',
  'holds {count} units; a block has at most {most}': 'enthält {count} Einheiten; ein Block hat höchstens {most}',
  'is {value}, which does not make a {kind}; give one of {known}': 'ist {value}, was kein {kind} macht; gib eines von diesen an: {known}',
  'names {count} patches; a unit has at most {most}': 'nennt {count} Stücke; eine Einheit hat höchstens {most}',
  'names {value}; number the strips from strip1 without a hole': 'nennt {value}; nummeriere die Streifen ab strip1 ohne Lücke',
  'names {value}, which a {kind} does not have; it has {known}': 'nennt {value}, was ein {kind} nicht hat; es hat {known}',
  'does not say which fabric {patch} is of; name one': 'sagt nicht, aus welchem Stoff {patch} ist; nenne einen',
  'is {value}; give a width and a height above zero': 'ist {value}; gib eine Breite und eine Höhe über null an',
  'is {value}; give quarter turns clockwise: 0, 1, 2 or 3': 'ist {value}; gib Vierteldrehungen im Uhrzeigersinn an: 0, 1, 2 oder 3',
  'is {value}; a {kind} is square, give the same width and height': 'ist {value}; {kind} ist quadratisch, gib gleiche Breite und Höhe an',
  'is {value}; a goose is twice as wide as high before it is turned': 'ist {value}; eine Gans ist doppelt so breit wie hoch, bevor sie gedreht wird',
  'is {value}; give the leg of the clipped corners in cells, above zero':
    'ist {value}; gib den Schenkel der gekappten Ecken in Feldern an, über null',
  'is {value}, so that the clipped corners overlap; give a shorter leg':
    'ist {value}, sodass die gekappten Ecken sich überlappen; gib einen kürzeren Schenkel an',
  'is {value}, so that nothing is left of the centre; give a shorter leg':
    'ist {value}, sodass von der Mitte nichts bleibt; gib einen kürzeren Schenkel an',
  'has {count} corners; a patch needs at least three': 'hat {count} Ecken; ein Stück braucht mindestens drei',
  'has {count} corners; a patch has at most {most}': 'hat {count} Ecken; ein Stück hat höchstens {most}',
  'cross or touch each other, or leave no cloth; draw the outline once round without crossing it':
    'kreuzen oder berühren sich, oder lassen keinen Stoff; zeichne den Umriss einmal herum, ohne ihn zu kreuzen',
  'Two-at-a-time hourglasses need the same pair of fabrics on both sides of the long seam; cut plain triangles, or recolour it.':
    'Sanduhren, zwei auf einmal, brauchen beiderseits der langen Naht dasselbe Stoffpaar; schneide einzelne Dreiecke, oder färbe sie um.',
  'These strips are longer than the cloth is wide; cut them one by one (plain).':
    'Diese Streifen sind länger, als der Stoff breit ist; schneide sie einzeln.',
  'Two squares make one hourglass of each hand; {most} of {all} are drawn with the same hand. Turn or mirror some of them, or expect their long seams to run the other way.':
    'Zwei Quadrate geben je eine Sanduhr jeder Hand; {most} von {all} sind mit derselben Hand gezeichnet. Drehe oder spiegle einige, oder rechne damit, dass ihre langen Nähte andersherum laufen.',
  'The outside edges of these triangles are on the bias and lie at the edge of the block: handle them gently, or add a border.':
    'Die Außenkanten dieser Dreiecke liegen im schrägen Fadenlauf und am Rand des Blocks: Fass sie sanft an, oder setze einen Rand an.',
  'What is sewn as cut ({method}) is not trimmed: it is not cut larger.':
    'Was genäht wird wie geschnitten ({method}), wird nicht getrimmt: Es wird nicht größer geschnitten.',
  'The print of {name} will lie turned a quarter in a piece of {size}: it is wider than the cloth, and cut along its length.':
    'Der Druck von {name} wird in einem Teil von {size} um ein Viertel gedreht liegen: Es ist breiter als der Stoff und wird längs geschnitten.',
  'A piece of {name}, {size}, is wider and longer than the cloth; divide it, or use wider cloth.':
    'Ein Teil aus {name}, {size}, ist breiter und länger als der Stoff; teile es, oder nimm breiteren Stoff.',
  'Before you cut, measure the sewn piece through its middle, not along its edges, and cut both strips of a pair to that length; or take the mean of three measurements. Sides first; measure again for top and bottom.':
    'Miss vor dem Schneiden das Genähte durch seine Mitte, nicht an den Kanten, und schneide beide Streifen eines Paars auf diese Länge; oder nimm das Mittel von drei Messungen. Zuerst die Seiten; miss neu für oben und unten.',
  'These free patches have a side at the outside of the block and others on the slant: lay each template as the patch lies in the block, so that its outside edge runs along the grain.':
    'Diese freien Stücke haben eine Seite außen am Block und andere in der Schräge: Leg jede Schablone, wie das Stück im Block liegt, damit seine Außenkante im Fadenlauf liegt.',
  'It needs the same two fabrics on both sides of the long seam.': 'Sie braucht beiderseits der langen Naht dieselben zwei Stoffe.',
  'The strips are longer than the cloth is wide.': 'Die Streifen sind länger, als der Stoff breit ist.',
  'The print of {names} will lie {how} in {where}.': 'Der Druck von {names} wird {how} liegen: {where}.',
  'on the slant': 'schräg',
  '{one} of {all} units': '{one} von {all} Einheiten',
  'Press the seams of {unit} the other way where it helps: lift the rule of its method.':
    'Bügle die Nähte von {unit} andersherum, wo es hilft: Hebe die Regel ihrer Methode auf.',
  'Press this seam the other way.': 'Bügle diese Naht andersherum.',
  'Join by {order}: then every meeting nests.': 'Näh zusammen nach {order}: Dann greift jedes Treffen ineinander.',
  'Join by {order}: then this meeting does not clash.': 'Näh zusammen nach {order}: Dann stößt dieses Treffen nicht zusammen.',
  'Press this seam open.': 'Bügle diese Naht auseinander.',
  'Every pair of seams that meet nests, so there is nothing to lower.':
    'Jedes Nahtpaar, das sich trifft, greift ineinander, also gibt es nichts zu verringern.',
  '{seams}. All other seams are free of these, so no pressing of these joins has fewer.':
    '{seams}. Alle anderen Nähte sind davon frei, also hat kein Bügeln dieser Nähte weniger.',
  'Seams {seams} each decide the next: {cause}, so at least {times} must stay':
    'Die Nähte {seams} entscheiden je die nächste: {cause}, also muss mindestens {times} bleiben',
  '{seams} each decide the next: {cause}, so at least {times} must stay':
    '{seams} entscheiden je die nächste: {cause}, also muss mindestens {times} bleiben',
  'the ways of {count} of them are settled by their method or by you': '{count} von ihnen sind durch ihre Methode oder durch dich festgelegt',
  'going once round, the turns do not come out even': 'einmal herum gehen die Wechsel nicht auf',
  'one clash': 'ein Zusammenstoß',
  '{count} clashes': '{count} Zusammenstöße',
  'Alike units are pressed alike, so their seams turn together: one choice is left.':
    'Gleiche Einheiten werden gleich gebügelt, also wenden sich ihre Nähte gemeinsam: Eine Wahl bleibt.',
  'Alike units are pressed alike, so their seams turn together: {count} choices are left.':
    'Gleiche Einheiten werden gleich gebügelt, also wenden sich ihre Nähte gemeinsam: {count} Wahlen bleiben.',
  '{told} Each was weighed against every way those it meets may lie, and none was left out: no pressing has fewer than {count}.':
    '{told} Jede wurde gegen jede Lage derer gewogen, die sie trifft, und keine ausgelassen: Kein Bügeln hat weniger als {count}.',
  '{told} There are too many to weigh them all: this is the best found, and no pressing has fewer than {count}.':
    '{told} Es sind zu viele, um alle zu wägen: Dies ist das Beste, was gefunden wurde, und kein Bügeln hat weniger als {count}.',
  'Pressed like the other units that are alike.': 'Gebügelt wie die anderen gleichen Einheiten.',
  'Sew {unit} turned: the picture stays, its seams run the other way.': 'Näh {unit} gedreht: Das Bild bleibt, ihre Nähte laufen andersherum.',
  'Sew {unit} as its mirror image: the picture stays, its seams run the other way.':
    'Näh {unit} als ihr Spiegelbild: Das Bild bleibt, ihre Nähte laufen andersherum.',
  'Your word on pressing here was passed over: {reason}.': 'Dein Wort zum Bügeln hier wurde übergangen: {reason}.',
  'a later word of yours presses the same seam otherwise': 'ein späteres Wort von dir bügelt dieselbe Naht anders',
  'You asked for this.': 'Du hast es so verlangt.',
  'You asked for this unit’s seams to be pressed open.': 'Du hast verlangt, die Nähte dieser Einheit auseinanderzubügeln.',
  'Geese made four at a time are pressed toward their wings.': 'Gänse, vier auf einmal gemacht, werden zu ihren Flügeln hin gebügelt.',
  'A flipped corner is pressed toward the corner.': 'Eine umgeklappte Ecke wird zur Ecke hin gebügelt.',
  'no seam of this plan runs there': 'dort läuft keine Naht dieses Plans',
  'several seams meet there; give a point on one of them': 'dort treffen sich mehrere Nähte; gib einen Punkt auf einer von ihnen an',
  'that is the end of a seam; give a point between its ends': 'das ist das Ende einer Naht; gib einen Punkt zwischen ihren Enden an',
  'the point to press toward lies on neither side of the seam': 'der Punkt, zu dem gebügelt werden soll, liegt auf keiner Seite der Naht',
  'Away from the side with more seams, so that less cloth piles up.': 'Weg von der Seite mit mehr Nähten, damit sich weniger Stoff türmt.',
  'Toward the darker fabric.': 'Zum dunkleren Stoff hin.',
  'Either way: both sides are alike.': 'Gleich wie herum: Beide Seiten sind gleich.',
  'Nothing is sewn while the layout has gaps or overlaps.': 'Nichts wird genäht, solange die Anordnung Lücken oder Überlappungen hat.',
  'This seam is sewn only part of the way at first, and finished once its neighbours are on.':
    'Diese Naht wird zuerst nur ein Stück weit genäht und beendet, wenn ihre Nachbarn angenäht sind.',
  'This seam bends: it is set in, stopping at the bend with the needle down.':
    'Diese Naht knickt: Sie wird eingesetzt; halte am Knick mit der Nadel im Stoff an.',
  'Alike units are to be pressed alike, but this seam and its likes are settled in different ways: each keeps its own.':
    'Gleiche Einheiten sollen gleich gebügelt werden, aber diese Naht und ihresgleichen sind verschieden festgelegt: Jede behält ihre Weise.',
  'So that it nests where it meets other seams.': 'Damit sie ineinandergreift, wo sie andere Nähte trifft.',
  'Either way will do.': 'Beides geht.',
  'a quarter turn needs a block as wide as it is high; choose none or free':
    'eine Vierteldrehung braucht einen Block, der so breit wie hoch ist; wähle keine oder freie',
  'Every pair of seams that meets between blocks nests.': 'Jedes Nahtpaar, das sich zwischen Blöcken trifft, greift ineinander.',
  'One meeting clashes between blocks.': 'Ein Treffen zwischen Blöcken stößt zusammen.',
  '{count} meetings clash between blocks.': '{count} Treffen zwischen Blöcken stoßen zusammen.',
  'One of them is a seam running through the block from edge to edge, leaning the same way at both ends: a copy set the same way meets it pressed alike. Turn every other block, or press it the opposite way.':
    'Eines davon ist eine Naht, die von Kante zu Kante durch den Block läuft und an beiden Enden gleich liegt: Eine gleich gesetzte Kopie trifft sie gleich gebügelt. Drehe jeden zweiten Block, oder bügle ihn andersherum.',
  '{count} of them are seams running through the block from edge to edge, leaning the same way at both ends: a copy set the same way meets it pressed alike. Turn every other block, or press it the opposite way.':
    '{count} davon sind Nähte, die von Kante zu Kante durch den Block laufen und an beiden Enden gleich liegen: Eine gleich gesetzte Kopie trifft sie gleich gebügelt. Drehe jeden zweiten Block, oder bügle ihn andersherum.',
  'Some are seams whose way a method settles (geese toward their wings, flipped corners toward the corner), so both sides lie alike. With those of every other block pressed the other way, none would clash.':
    'Manche sind Nähte, deren Lage eine Methode festlegt (Gänse zu ihren Flügeln, umgeklappte Ecken zur Ecke), also liegen beide Seiten gleich. Wären die jedes zweiten Blocks andersherum gebügelt, stieße keine zusammen.',
  'Some are seams whose way a method settles (geese toward their wings, flipped corners toward the corner), so both sides lie alike. With those of every other block pressed the other way, {count} would clash.':
    'Manche sind Nähte, deren Lage eine Methode festlegt (Gänse zu ihren Flügeln, umgeklappte Ecken zur Ecke), also liegen beide Seiten gleich. Wären die jedes zweiten Blocks andersherum gebügelt, stießen {count} zusammen.',
  'The choice was sought band by band: no fewer than {count} can be had, perhaps more.':
    'Die Wahl wurde Band für Band gesucht: Weniger als {count} sind nicht zu haben, vielleicht mehr.',
  'With these turns no other choice of pressings has fewer: all were weighed.':
    'Mit diesen Drehungen hat keine andere Wahl des Bügelns weniger: Alle wurden gewogen.',
  'No other choice of turns and pressings has fewer: all were weighed.':
    'Keine andere Wahl von Drehungen und Bügeln hat weniger: Alle wurden gewogen.',
  'Each block has one clash of its own besides.': 'Jeder Block hat außerdem einen eigenen Zusammenstoß.',
  'Each block has {count} clashes of its own besides.': 'Jeder Block hat außerdem {count} eigene Zusammenstöße.',
  'The rule of thumb for an even number of units a side ({count} here) is to press all blocks alike.':
    'Die Faustregel für eine gerade Zahl von Einheiten je Seite (hier {count}) ist, alle Blöcke gleich zu bügeln.',
  'The rule of thumb for an odd number of units a side ({count} here) is to press every other block the opposite way.':
    'Die Faustregel für eine ungerade Zahl von Einheiten je Seite (hier {count}) ist, jeden zweiten Block andersherum zu bügeln.',
  '{rule} It speaks of the short seams; the others clash all the same, so the count above stands.':
    '{rule} Sie spricht von den kurzen Nähten; die anderen stoßen trotzdem zusammen, also gilt die Zahl oben.',
  '{rule} Here all nests without it.': '{rule} Hier greift alles ohne sie ineinander.',
  'There is no cloth here; fill the gap.': 'Hier ist kein Stoff; fülle die Lücke.',
  'Units lie over each other here; move one of them.': 'Hier liegen Einheiten übereinander; verschiebe eine.',
  'Cloth lies beyond the grid here; move it in or make the grid larger.':
    'Hier liegt Stoff außerhalb des Rasters; rücke ihn herein, oder mach das Raster größer.',
  'This layout could not be worked out ({why}); undo the last change.':
    'Diese Anordnung ließ sich nicht ausrechnen ({why}); nimm die letzte Änderung zurück.',
  'Cotton, needled, with scrim': 'Baumwolle, genadelt, mit Gitter',
  'Cotton, needled': 'Baumwolle, genadelt',
  'Bamboo and cotton': 'Bambus und Baumwolle',
  'Cotton, natural, thin': 'Baumwolle, natur, dünn',
  Wool: 'Wolle',
  'Polyester, thick': 'Polyester, dick',
  'Cotton, old style, without scrim': 'Baumwolle, alter Art, ohne Gitter',
  'Cotton, bleached, unbonded': 'Baumwolle, gebleicht, ungebunden',
  'Any, for a quilt in use': 'Jedes, für einen Quilt in Gebrauch',
  'One batch makes these geese.': 'Ein Satz macht diese Gänse.',
  '{count} batches make these geese.': '{count} Sätze machen diese Gänse.',
}

/** Any message of the geometry in the maker's language. All of English comes with this file: only what is loaded later may import it. */
import { english, type Message, say } from '../../geometry/index.ts'
import { chosenWords, spelt } from './words.ts'

export const translateAny = (message: Message): string => spelt(say(chosenWords() ?? english, message), message.params)

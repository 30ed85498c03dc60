/** What the trade's words mean, in the order of the page's alphabet, with a field to find one. */
import { useState } from 'react'
import { GLOSSARY } from '../../words/glossary.ts'
import { currentLanguage, t, tn } from '../../words/words.ts'

export function Glossary() {
  const [search, setSearch] = useState('')
  const found = GLOSSARY.map(([word, meaning]) => ({ word: t(word), meaning: t(meaning) }))
    .filter(({ word, meaning }) => `${word} ${meaning}`.toLocaleLowerCase().includes(search.trim().toLocaleLowerCase()))
    .sort((a, b) => a.word.localeCompare(b.word, currentLanguage()))
  return (
    <>
      <label className="find-word">
        {t('Find a word')}
        <input type="search" value={search} onChange={(event) => setSearch(event.target.value)} />
      </label>
      <p className="unseen" role="status">
        {tn(found.length, 'One word found.', '{n} words found.')}
      </p>
      {found.length === 0 ? (
        <p>{t('That word isn’t explained here. Try a shorter part of it.')}</p>
      ) : (
        <dl className="help-list">
          {found.map(({ word, meaning }) => (
            <div key={word}>
              <dt>{word}</dt>
              <dd>{meaning}</dd>
            </div>
          ))}
        </dl>
      )}
    </>
  )
}

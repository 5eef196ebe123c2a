import type { Caution } from '#practice/design-cautions'
import { capital } from '#ui/capital'
import { SectionTitle } from '#ui/page/section-title'

const subjects: Readonly<Record<Caution['subject'], string>> = {
  heading: 'Heading',
  space: 'Space',
  numbers: 'Numbers',
  concussion: 'Knocks to the head',
  heat: 'Heat',
  load: 'Load',
}

/** What to mind, warnings first, each with where it is from. */
export function CautionList({ cautions }: { readonly cautions: readonly Caution[] }) {
  return (
    <section>
      <SectionTitle note="Advice with its source. The rules where you play, and whoever is licensed to judge, come first.">
        To mind
      </SectionTitle>
      <ul className="max-w-prose space-y-3">
        {cautions.map(({ subject, isWarning, words, source }) => (
          <li
            key={words}
            className={`border-l-4 px-4 py-2 ${isWarning ? 'border-warn bg-warn-pale' : 'border-rule-strong'}`}
          >
            <p>
              <strong className={`font-semibold ${isWarning ? 'text-warn' : ''}`}>
                {isWarning
                  ? `Outside what is published: ${subjects[subject].toLowerCase()}. `
                  : `${subjects[subject]}. `}
              </strong>
              {words}
            </p>
            <p className="text-sm text-soft">
              {capital(source.body)}: {source.title} ({source.season}).
            </p>
          </li>
        ))}
      </ul>
    </section>
  )
}

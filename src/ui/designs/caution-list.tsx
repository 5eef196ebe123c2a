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

type CautionsProps = { readonly cautions: readonly Caution[] }

/** The usual cautions, each with where it is from. */
export function CautionPart({ cautions }: CautionsProps) {
  return (
    <section>
      <SectionTitle note="Advice with its source. The rules where you play, and whoever is licensed to judge, come first.">
        To mind
      </SectionTitle>
      <CautionList cautions={cautions} />
    </section>
  )
}

export function CautionList({ cautions }: CautionsProps) {
  return (
    <ul className="max-w-prose space-y-3 empty:hidden">
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
  )
}

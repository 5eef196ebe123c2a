'use client'

import type { ComponentProps } from 'react'
import { searchMoreLineUps } from '#lineup/draft/search-more-line-ups'
import { LineUpForm } from '#ui/line-up/line-up-form'

const solver = searchMoreLineUps(() => new Promise((resume) => setTimeout(resume, 20)))

/** The page of a line-up with its solver. */
export function LineUpPlanner(props: Omit<ComponentProps<typeof LineUpForm>, 'solver' | 'choices'>) {
  return <LineUpForm {...props} solver={solver} choices={() => null} />
}

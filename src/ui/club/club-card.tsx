import type { ReactNode } from 'react'
import { PageLink } from '#ui/page/page-link'

type ClubCardProps = { readonly href: string; readonly title: string; readonly children: ReactNode }

/** One part of the club: where it is arranged, and how it stands. */
export function ClubCard({ href, title, children }: ClubCardProps) {
  return (
    <li className="border border-rule-strong bg-leaf p-4">
      <h2 className="text-lg font-semibold">
        <PageLink href={href} className="tap inline-flex items-center">
          {title}
        </PageLink>
      </h2>
      <p className="text-soft">{children}</p>
    </li>
  )
}

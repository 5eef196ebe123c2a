import type { ReactNode } from 'react'
import { type ButtonWeight, buttonLook } from '#ui/page/button-look'

type WholePageLinkButtonProps = {
  readonly href: string
  readonly weight?: ButtonWeight
  readonly children: ReactNode
}

/** A link that loads its page whole and needs no script: for pages that a phone keeps, and those of another part of the book. */
export function WholePageLinkButton({ href, weight = 'plain', children }: WholePageLinkButtonProps) {
  return (
    <a href={href} className={buttonLook(weight)}>
      {children}
    </a>
  )
}

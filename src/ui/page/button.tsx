import type { ButtonHTMLAttributes, ReactNode } from 'react'
import { PageLink } from '#ui/page/page-link'

type Weight = 'main' | 'plain'

const look: Readonly<Record<Weight, string>> = {
  main: 'border-accent bg-accent text-white hover:opacity-90',
  plain: 'border-rule-strong bg-leaf text-ink hover:border-ink',
}

const shape =
  'tap inline-flex cursor-pointer items-center justify-center border px-4 py-2 font-medium no-underline disabled:cursor-not-allowed disabled:opacity-50'

type ButtonProps = ButtonHTMLAttributes<HTMLButtonElement> & { readonly weight?: Weight }

/** A form is sent unless `type` says otherwise. */
export function Button({ weight = 'main', type = 'submit', className = '', ...rest }: ButtonProps) {
  return <button type={type} className={`${shape} ${look[weight]} ${className}`} {...rest} />
}

type LinkButtonProps = { readonly href: string; readonly weight?: Weight; readonly children: ReactNode }

export function LinkButton({ href, weight = 'plain', children }: LinkButtonProps) {
  return (
    <PageLink href={href} className={`${shape} ${look[weight]}`}>
      {children}
    </PageLink>
  )
}

/** A link that loads its page whole: for pages that a phone keeps, and those of another part of the book. */
export function WholePageLinkButton({ href, weight = 'plain', children }: LinkButtonProps) {
  return (
    <a href={href} className={`${shape} ${look[weight]}`}>
      {children}
    </a>
  )
}

import type { ButtonHTMLAttributes, ReactNode } from 'react'
import { type ButtonWeight, buttonLook } from '#ui/page/button-look'
import { PageLink } from '#ui/page/page-link'

type ButtonProps = ButtonHTMLAttributes<HTMLButtonElement> & { readonly weight?: ButtonWeight }

/** A form is sent unless `type` says otherwise. */
export function Button({ weight = 'main', type = 'submit', className = '', ...rest }: ButtonProps) {
  return <button type={type} className={`${buttonLook(weight)} ${className}`} {...rest} />
}

type LinkButtonProps = { readonly href: string; readonly weight?: ButtonWeight; readonly children: ReactNode }

export function LinkButton({ href, weight = 'plain', children }: LinkButtonProps) {
  return (
    <PageLink href={href} className={buttonLook(weight)}>
      {children}
    </PageLink>
  )
}

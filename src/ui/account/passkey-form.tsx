'use client'

import { type ReactNode, useRef, useState } from 'react'
import type { SendForm } from '#ui/entry/send-form'
import { Button } from '#ui/page/button'
import { ReplyForm } from '#ui/page/reply-form'

/** What the server wants the browser to be asked, or why it does not. */
export type AskBrowser = (
  form: FormData,
) => Promise<
  | { readonly ok: true; readonly options: Readonly<Record<string, unknown>> }
  | { readonly ok: false; readonly why: string }
>

type PasskeyFormProps = {
  readonly kind: 'make' | 'use'
  readonly ask: AskBrowser
  readonly send: SendForm
  readonly button: string
  readonly refusedTitle: string
  readonly children?: ReactNode
}

/**
 * A form whose answer the browser gives, by finger, face or the phone's own code (WebAuthn). Where a browser knows no
 * passkeys, or no script runs, there is none.
 */
export function PasskeyForm({ kind, ask, send, button, refusedTitle, children }: PasskeyFormProps) {
  const answer = useRef<HTMLInputElement>(null)
  const submit = useRef<HTMLButtonElement>(null)
  const [why, setWhy] = useState('')
  const [isAsking, setAsking] = useState(false)

  const start = async () => {
    setWhy('')
    setAsking(true)
    try {
      const question = await ask(new FormData())
      if (!question.ok) return setWhy(question.why)
      const credential = await askBrowser(kind, question.options)
      if (!answer.current) return
      answer.current.value = JSON.stringify(credential)
      submit.current?.click()
    } catch {
      setWhy('The browser gave no passkey. Nothing has changed; try again, or do without.')
    } finally {
      setAsking(false)
    }
  }
  return (
    <ReplyForm
      send={send}
      refusedTitle={refusedTitle}
      waiting="One moment…"
      className="space-y-3 noscript:hidden"
    >
      {children}
      <input ref={answer} type="hidden" name="answer" />
      <button ref={submit} type="submit" hidden tabIndex={-1}>
        {button}
      </button>
      <Button type="button" weight="plain" onClick={start} disabled={isAsking}>
        {button}
      </Button>
      {why ? <p role="alert">{why}</p> : null}
    </ReplyForm>
  )
}

/** Both directions of JSON are the browser's own (WebAuthn Level 3, 5.1.8 to 5.1.10). */
async function askBrowser(
  kind: 'make' | 'use',
  options: Readonly<Record<string, unknown>>,
): Promise<unknown> {
  const credential =
    kind === 'make'
      ? await navigator.credentials.create({
          publicKey: PublicKeyCredential.parseCreationOptionsFromJSON(
            options as unknown as PublicKeyCredentialCreationOptionsJSON,
          ),
        })
      : await navigator.credentials.get({
          publicKey: PublicKeyCredential.parseRequestOptionsFromJSON(
            options as unknown as PublicKeyCredentialRequestOptionsJSON,
          ),
        })
  if (!(credential instanceof PublicKeyCredential)) throw new Error('no passkey')
  return credential.toJSON()
}

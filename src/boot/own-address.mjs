import { Refusal } from './refusal.mjs'

/**
 * Holds what the settings say of the outside against what can be true: links for families, cookies and what is believed
 * of a request are made from it.
 *
 * @param {NodeJS.ProcessEnv} env
 * @throws {Refusal}
 */
export function checkOwnAddress({ TURNBOOK_URL: address, TURNBOOK_CONTACT: contact }) {
  if (address && !isAddress(address)) {
    throw new Refusal(
      `TURNBOOK_URL is "${address}"; it should be the address in front and nothing behind it, like https://book.example.org.`,
    )
  }
  if (contact && !isContact(contact)) {
    throw new Refusal(
      `TURNBOOK_CONTACT is "${contact}"; it should be an address for mail, or a link that begins with https.`,
    )
  }
}

function isAddress(text) {
  if (!URL.canParse(text)) return false
  const { protocol, origin } = new URL(text)
  // The end of an address may have a stroke or none; anything more would be a page.
  return (protocol === 'https:' || protocol === 'http:') && (text === origin || text === `${origin}/`)
}

function isContact(text) {
  return (
    /^(?:mailto:)?[^\s@:/]+@[^\s@:/]+$/.test(text) || (/^(?:https|tel):\S+$/.test(text) && URL.canParse(text))
  )
}

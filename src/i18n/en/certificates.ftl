## Certificates

caution-certificate = This says how figures were computed, so that anyone can compute them again. It says nothing about what was installed, and nobody has inspected or approved anything by it.

text-tag-certificates = A result with its request, its proof and its fingerprints in one document, and whether such a document is what it says.
problem-detail-not-acceptable-page = The Accept header admits neither application/json nor text/html.
problem-detail-certificate-too-large = The certificate would be larger than { $most } bytes, which is the largest body that is taken to verify one. Ask about less at once.

text-certificate-reproduced = This service gives the same answer to the same request, to the byte.
text-certificate-altered = The certificate is not what this service writes: something in it was changed, or made up.
text-certificate-other-ruleset = The certificate was made under other rules, or by another version, than this service has. It cannot be reproduced here; today's answer is beside it.

text-certificate-other-request = The fingerprint of the request does not fit the request that is there.
text-certificate-other-answer = The fingerprint of the answer does not fit the answer that is there.
text-certificate-other-check-or-language = Request and answer fit their fingerprints, the whole does not: the check, the language or that fingerprint was changed.
text-certificate-other-fingerprints = The fingerprint of the whole fits, another does not: that fingerprint was changed.
text-certificate-wrong-signature = The signature was not made over what is there.
text-certificate-request-refused = This service refuses the request, under the very rules that the certificate names.
text-certificate-answered-otherwise = This service answers the request otherwise, under the very rules that the certificate names.

text-signature-valid = The signature was made over exactly this content with a key of this service: the holder of the key issued it.
text-signature-invalid = The signature was not made over this content, or is none.
text-signature-unknown-key = The signature names a key that is not known here, so it says nothing. Under other rules such a certificate cannot be told from one that was altered.
text-signature-none = There is no signature. A certificate under the rules of this service is held by its reproduction; under other rules it cannot be told from one that was altered.

text-certificate-kind = Certificate of a computed result
text-certificate-request = Request
text-certificate-answer = Answer
text-certificate-whole = Whole
text-certificate-signature = Signature
text-certificate-unsigned = not signed
text-certificate-known-by = What it is known by
text-certificate-how-to-verify = SHA-256 over canonical JSON (RFC 8785). This page, saved as a file, holds the whole certificate with every step of the proof as JSON, in the element with the id certificate. Post it to /v1/results/verify to have it computed again.
text-certificate-more-steps = { $count ->
        [one] One more sentence is left out; the certificate holds every step.
       *[other] { $count } more sentences are left out; the certificate holds every step.
    }

text-link-certificate = The same request, certified.
text-link-verification = The certificate, verified.

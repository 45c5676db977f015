## Certificados

caution-certificate = Esto dice cómo se calcularon las cifras, para que cualquiera pueda calcularlas de nuevo. No dice nada de lo que se instaló, y con ello nadie ha inspeccionado ni aprobado nada.

text-tag-certificates = Un resultado con su solicitud, su demostración y sus huellas en un solo documento, y si tal documento es lo que dice ser.
problem-detail-not-acceptable-page = El encabezado Accept no admite application/json ni text/html.
problem-detail-certificate-too-large = El certificado sería mayor de { $most } bytes, el mayor cuerpo que se acepta para verificarlo. Pregunte por menos a la vez.

text-certificate-reproduced = Este servicio da la misma respuesta a la misma solicitud, byte por byte.
text-certificate-altered = El certificado no es lo que este servicio escribe: algo en él se cambió o se inventó.
text-certificate-other-ruleset = El certificado se hizo con otras reglas, o con otra versión, que las de este servicio. Aquí no se puede reproducir; al lado está la respuesta de hoy.

text-certificate-other-request = La huella de la solicitud no corresponde a la solicitud que está ahí.
text-certificate-other-answer = La huella de la respuesta no corresponde a la respuesta que está ahí.
text-certificate-other-check-or-language = La solicitud y la respuesta corresponden a sus huellas, el conjunto no: se cambió la revisión, el idioma o esa huella.
text-certificate-other-fingerprints = La huella del conjunto corresponde, otra no: se cambió esa huella.
text-certificate-wrong-signature = La firma no se hizo sobre lo que está ahí.
text-certificate-request-refused = Este servicio rechaza la solicitud, con las mismas reglas que nombra el certificado.
text-certificate-answered-otherwise = Este servicio responde otra cosa a la solicitud, con las mismas reglas que nombra el certificado.

text-signature-valid = La firma se hizo exactamente sobre este contenido con una clave de este servicio: lo emitió quien tiene la clave.
text-signature-invalid = La firma no se hizo sobre este contenido, o no es una firma.
text-signature-unknown-key = La firma nombra una clave que aquí no se conoce, así que no dice nada. Con otras reglas, un certificado así no se distingue de uno alterado.
text-signature-none = No hay firma. Un certificado con las reglas de este servicio se sostiene porque se reproduce; con otras reglas no se distingue de uno alterado.

text-certificate-kind = Certificado de un resultado calculado
text-certificate-request = Solicitud
text-certificate-answer = Respuesta
text-certificate-whole = Conjunto
text-certificate-signature = Firma
text-certificate-unsigned = sin firmar
text-certificate-known-by = Cómo se reconoce
text-certificate-how-to-verify = SHA-256 sobre JSON canónico (RFC 8785). Esta página, guardada como archivo, contiene el certificado completo con cada paso de la demostración como JSON, en el elemento con el id certificate. Envíelo a /v1/results/verify para que se calcule de nuevo.
text-certificate-more-steps = { $count ->
        [one] Se omite una frase más; el certificado contiene cada paso.
       *[other] Se omiten { $count } frases más; el certificado contiene cada paso.
    }

text-link-certificate = La misma solicitud, certificada.
text-link-verification = El certificado, verificado.

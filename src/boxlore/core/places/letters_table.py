"""Letters that few languages write, and the countries where names are written with them (from memory; common practice,
no source). Letters of many languages (ä, ö, é, š) are not among them.
"""

LETTERS: dict[str, str] = {
    "øæ": "DK NO FO GL IS SJ SE DE",
    "å": "SE NO DK FI AX SJ FO GL EE DE",
    "łżź": "PL UA BY LT LV DE CZ SK RU",
    "őű": "HU RO SK RS UA HR AT SI",
    "õ": "EE LV RU PT BR VN AO MZ CV ST TL FI",
    "ñ": "ES AD MX GT HN SV NI CR PA CU DO PR VE CO EC PE BO CL AR UY PY PH GQ US FR NU",
    "řěů": "CZ SK PL DE AT UA RO",
    "ģķļņ": "LV EE LT RU BY MH",
    "ėųį": "LT LV BY PL RU DE",
    "ğış": "TR CY AZ GR BG MK RO MD SY IQ AM KZ UZ TM CR",
    "þð": "IS FO",
    "ţșț": "RO MD UA RS HU BG",
}
"""Letters of a row -> ISO 3166-1 codes of today's countries, those included that the language's names lie in."""

"""What is usual in a country: the order of day and month, the language, and which half of the year is its summer.

Only a suggestion, which a keeper sees and can change. Orders: Unicode CLDR 46, short dates (yMd), from memory; CA uses
both, so it asks. Halves: by the capital's latitude, from memory. Languages: the most spoken official one, from memory.
"""

MONTH_FIRST = ("US", "FM", "GU", "MH", "MP", "PH", "PR", "PW", "UM", "VI", "AS")
BOTH_ORDERS = ("CA",)

SOUTH = (
    "AO", "AQ", "AR", "AS", "AU", "BI", "BO", "BR", "BW", "CC", "CD", "CG", "CK", "CL", "CX", "EC", "FJ", "FK", "GA",
    "GS", "ID", "KE", "KM", "LS", "MG", "MU", "MW", "MZ", "NA", "NC", "NF", "NR", "NU", "NZ", "PE", "PF", "PG", "PN",
    "PY", "RE", "RW", "SB", "SC", "SH", "SZ", "TF", "TK", "TL", "TO", "TV", "TZ", "UY", "VU", "WF", "WS", "YT", "ZA",
    "ZM", "ZW",
)  # fmt: skip

LANGUAGES = {
    "AR": "es", "AT": "de", "BE": "nl", "BR": "pt", "CH": "de", "CL": "es", "CN": "zh", "CO": "es", "CZ": "cs",
    "DE": "de", "DK": "da", "EE": "et", "ES": "es", "FI": "fi", "FR": "fr", "GR": "el", "HR": "hr", "HU": "hu",
    "IL": "he", "IS": "is", "IT": "it", "JP": "ja", "KR": "ko", "LT": "lt", "LV": "lv", "MX": "es", "NL": "nl",
    "NO": "nb", "PE": "es", "PL": "pl", "PT": "pt", "RO": "ro", "RS": "sr", "RU": "ru", "SE": "sv", "SI": "sl",
    "SK": "sk", "TR": "tr", "UA": "uk", "UY": "es",
}  # fmt: skip
"""All others begin with English."""

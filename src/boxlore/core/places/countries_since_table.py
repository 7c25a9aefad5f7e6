"""Since when countries have existed under a name that people tell, for a gentle finding. From memory."""

SINCE: dict[str, tuple[int, str]] = {
    "EE": (1918, "Estonia declared independence on 24 February 1918"),
    "LV": (1918, "Latvia declared independence on 18 November 1918"),
    "LT": (1918, "Lithuania declared independence on 16 February 1918"),
    "FI": (1917, "Finland declared independence on 6 December 1917"),
    "IE": (1922, "the Irish Free State began on 6 December 1922"),
    "CZ": (1993, "the Czech Republic began on 1 January 1993"),
    "SK": (1993, "Slovakia began on 1 January 1993"),
    "UA": (1917, "a Ukrainian state was first proclaimed in 1917"),
    "BY": (1918, "a Belarusian state was first proclaimed in 1918"),
    "MD": (1991, "Moldova became independent in 1991"),
    "RS": (1882, "Serbia became a kingdom in 1882"),
    "HR": (1991, "Croatia became independent in 1991"),
    "SI": (1991, "Slovenia became independent in 1991"),
    "BA": (1992, "Bosnia and Herzegovina became independent in 1992"),
    "IL": (1948, "Israel was declared on 14 May 1948"),
    "PK": (1947, "Pakistan began on 14 August 1947"),
    "BD": (1971, "Bangladesh began in 1971"),
    "AU": (1901, "the Commonwealth of Australia began on 1 January 1901"),
}

ENGLISH_ALWAYS = frozenset({"IE", "AU", "RS", "UA"})
"""Names of lands that people used long before there was a state: never a finding."""

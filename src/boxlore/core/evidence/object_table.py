"""What the thing itself says of its years: processes, mounts, formats, postcard backs, stamp boxes, film and paper.

`first` and `last` are years outside which a thing of that kind is not known to have been made, 0 for no bound; `usual`
are those in which most were. Where two sources differ, the wider years stand. Each row names what it is taken from:

- Library of Congress, Prints and Photographs Division: *Popular Photographic Print Processes: Daguerreotypes* (2022);
  *Liljenquist: Ambrotypes and Tintypes*; *The Stereograph Format*.
- Western Australian Museum: *Conservation and Care of Collections* (2017), Appendix 7, Photographic processes.
- University of Padua: *Aid to identification of the most common black and white historical photographic processes*.
- Cornell University Library: *Dawn's Early Light: Photographic Processes 1839-1889*.
- Art & Architecture Thesaurus: Getty, scope notes.
- Santa Cruz Museum of Art and History: *Guide to the MAH Postcard Collection*, History.
- Smithsonian Institution Archives: *Greetings from the Smithsonian: A Postcard History*.
- EdinPhoto: *Real Photo Postcards: Stamp Boxes*. Historical Clothing: *Postcard Types: Personal Postcards*, Table 1, Post
  card print paper. Both are tables of collectors.
- New Zealand Philatelic Federation: glossary (divided backs abroad).
- Northeast Document Conservation Center: leaflet 5.1 (film base).
- Weaver and Long: G. Weaver, Z. Long, “Chromogenic Characterization: A Study of Kodak Color Prints, 1942-2008”, *Topics
  in Photographic Preservation* 13 (2009) 67-82.
- Graphics Atlas: Image Permanence Institute, Chromogenic.
- Abel's Photographic Weekly, 4 July 1914.
- Society of Northern Alberta Print-artists: *Invention and Obsolescence: A Timeline of Photographic Processes*.
- Museum of Fine Arts, Boston: CAMEO, Color film. Museum of Obsolete Technology: Polaroid SX-70. Museum of Obsolete Media:
  Disc film; 135 film. Early Photography: Disc and Cartridges.
- Family Tree Magazine, March 2010: *Establishing Dates for Color Photographs*; *Getting up to Date*.
- Getty Conservation Institute: Newsletter 22.3. Wilhelm: H. Wilhelm, *A 15-Year History of Digital Printing Technology*.
- National Park Service: *Film Identification*. Messier: P. Messier, 2005, as photographymedia.com cites him.
- Harry Ransom Center: *Photographic Negatives*. American Institute for Conservation: wiki, *Gelatin Dry-plate Negative*.
- Krentz: A. Krentz, *Snapshots with an Edge: A Study of the Deckle Edge in the North American Snapshot* (2014).
- Lost Faces: *Using Revenue Stamps to Date Photographs*. United States Post Office Department, as National Public Radio
  cites it: ZIP codes.

Where a publication says when a thing began and not when it ended, the end is open.
"""

import re
from typing import NamedTuple


class Made(NamedTuple):
    """Things of one kind: how they are called in words, the years, and the publication. `where` is empty for worldwide.
    `direct` things were in the camera themselves: the thing is as old as the picture, and no print of a later day."""

    called: tuple[str, ...]
    first: int
    usual_first: int
    usual_last: int
    last: int
    source: str
    where: str = ""
    direct: bool = False


OBJECTS: tuple[Made, ...] = (
    # processes
    Made(("daguerreotype", "dagerrotüüp", "daguerreotypie"), 1839, 1842, 1858, 1865, "Library of Congress, Daguerreotypes; Cornell University Library", direct=True),
    Made(("ambrotype", "ambrotüüp", "ambrotypie"), 1851, 1855, 1865, 1880, "Library of Congress, Ambrotypes and Tintypes; University of Padua", direct=True),
    Made(("tintype", "tin type", "ferrotype", "ferrotüüp"), 1853, 1860, 1890, 1940, "Library of Congress, Ambrotypes and Tintypes; University of Padua; Western Australian Museum", direct=True),
    Made(("salted paper", "salt print"), 1839, 1840, 1860, 1865, "Western Australian Museum; University of Padua"),
    Made(("albumen", "albumiin"), 1850, 1855, 1895, 1929, "Cornell University Library; Western Australian Museum"),
    Made(("cyanotype", "blueprint"), 1842, 1880, 1920, 0, "Western Australian Museum; University of Padua"),
    Made(("platinum print", "platinotype"), 1873, 1880, 1914, 1939, "University of Padua; Western Australian Museum"),
    Made(("collodion printing-out", "collodion pop", "collodion print"), 1864, 1885, 1910, 1929, "University of Padua"),
    Made(("gelatin printing-out", "gelatin pop"), 1882, 1885, 1920, 1939, "Cornell University Library"),
    Made(("gelatin silver", "silver gelatin", "bromide print"), 1873, 1895, 0, 0, "University of Padua; Western Australian Museum"),
    Made(("autochrome",), 1903, 1907, 1932, 0, "Society of Northern Alberta Print-artists: patent of 1903; Museum of Fine Arts, Boston: made from 1907", direct=True),
    Made(("chromogenic print", "kodacolor print", "colour print", "color print", "c-print"), 1942, 1945, 0, 0, "Weaver and Long; Graphics Atlas"),
    Made(("resin coated colour", "resin-coated colour", "resin coated color", "resin-coated color", "rc colour"), 1968, 1970, 0, 0, "Graphics Atlas"),
    Made(("peel-apart instant", "instant print, peel-apart"), 1948, 1950, 1999, 0, "Museum of Obsolete Technology; Family Tree Magazine", direct=True),
    Made(("integral instant", "sx-70", "instant print, integral"), 1972, 1975, 2008, 0, "Museum of Obsolete Technology", direct=True),
    Made(("inkjet",), 1985, 1995, 0, 0, "Getty Conservation Institute, The History and Conservation of Digital Prints; Wilhelm"),
    # negatives, slides, films
    Made(("nitrate",), 1889, 1890, 1940, 1955, "Northeast Document Conservation Center, which ends it in 1951 and others in the early 1950s", direct=True),
    Made(("acetate negative", "safety film", "acetate film"), 1920, 1925, 1980, 0, "National Park Service, Film Identification; Messier: acetate from 1923", direct=True),
    Made(("polyester film", "polyester negative"), 1955, 1960, 0, 0, "Messier: from 1955; National Park Service, Film Identification", direct=True),
    Made(("glass plate negative", "glass negative", "glass plate", "klaasnegatiiv", "glasnegativ", "glasplattennegativ"), 1848, 1880, 1925, 0, "Harry Ransom Center, Photographic Negatives: collodion from 1851; a few of albumen before it", direct=True),
    Made(("polaroid",), 1948, 1955, 2008, 0, "Museum of Obsolete Technology; Family Tree Magazine", direct=True),
    Made(("dry plate", "gelatin glass negative"), 1871, 1880, 1925, 0, "American Institute for Conservation, Gelatin Dry-plate Negative: Maddox, 1871", direct=True),
    Made(("wet plate", "collodion negative", "collodion glass negative"), 1851, 1855, 1875, 0, "Harry Ransom Center, Photographic Negatives; Cornell University Library", direct=True),
    Made(("autographic",), 1914, 1915, 1926, 0, "Abel's Photographic Weekly, 4 July 1914", direct=True),
    Made(("kodachrome slide", "kodachrome"), 1935, 1939, 1999, 2010, "Museum of Fine Arts, Boston: from 1935; the last laboratory stopped on 30 December 2010 (New York Times)", direct=True),
    Made(("135 film", "35 mm negative", "35mm negative"), 1892, 1934, 0, 0, "Family Tree Magazine: film of 35 mm from 1892; Museum of Obsolete Media: cartridge 135 from 1934", direct=True),
    Made(("126 cartridge", "instamatic"), 1963, 1964, 1980, 0, "Early Photography: introduced in 1963; Family Tree Magazine", direct=True),
    Made(("110 cartridge", "pocket instamatic"), 1972, 1973, 1990, 0, "Family Tree Magazine: introduced in 1972", direct=True),
    Made(("disc film",), 1982, 1982, 1988, 1999, "Museum of Obsolete Media", direct=True),
    # cards and mounts
    Made(("carte-de-visite", "carte de visite", "visiitkaart", "cdv"), 1854, 1860, 1880, 1910, "Art & Architecture Thesaurus"),
    Made(("cabinet card", "cabinet photograph", "kabinettfoto", "kabinetkort"), 1863, 1867, 1900, 1924, "Art & Architecture Thesaurus"),
    Made(("stereograph", "stereoview", "stereo card"), 1850, 1870, 1920, 0, "Library of Congress, The Stereograph Format: from the 1850s, and still made"),
    # edges and borders
    Made(("deckle edge", "deckled edge", "sakilise servaga"), 1920, 1934, 1960, 0, "Krentz: popular in the middle of the twentieth century"),
    Made(("date printed in the border", "date printed on the border"), 1945, 1950, 1975, 0, "Historical Clothing, Snapshots: after 1945, popular in the 1950s"),
    # postcards
    Made(("private mailing card",), 1898, 1898, 1901, 1901, "Smithsonian Institution Archives; Santa Cruz Museum of Art and History", "United States"),
    Made(("undivided back",), 1869, 1898, 1907, 1907, "Santa Cruz Museum of Art and History; Smithsonian Institution Archives; New Zealand Philatelic Federation; elsewhere earlier"),
    Made(("divided back",), 1902, 1907, 0, 0, "New Zealand Philatelic Federation: Britain 1902, France 1904, Germany 1905; Santa Cruz Museum of Art and History: United States 1 March 1907"),
    Made(("real-photo postcard", "real photo postcard", "photo postcard", "fotopostkaart"), 1900, 1907, 1940, 0, "Santa Cruz Museum of Art and History"),
    Made(("linen postcard",), 1930, 1931, 1945, 1959, "Smithsonian Institution Archives"),
    Made(("photochrome postcard", "chrome postcard"), 1939, 1945, 0, 0, "Smithsonian Institution Archives"),
    # stamp boxes of photographic postcard papers
    Made(("azo four triangles up", "azo, four triangles up", "azo 4 triangles up", "azo triangles up"), 1904, 1904, 1918, 1918, "EdinPhoto; Historical Clothing"),
    Made(("azo two up two down", "azo, two up, two down", "azo 2 up 2 down", "azo triangles up down"), 1918, 1918, 1930, 1930, "EdinPhoto; Historical Clothing"),
    Made(("azo squares", "azo, squares"), 1922, 1927, 1940, 1949, "EdinPhoto: 1927-1940; Historical Clothing: 1923-1940s"),
    Made(("azo diamonds", "azo, diamonds"), 1907, 1907, 1909, 1909, "Historical Clothing"),
    Made(("azo circles", "azo, circles"), 1908, 1908, 1911, 1911, "Historical Clothing"),
    Made(("azo empty corners", "azo, empty corners"), 1922, 1922, 1926, 1926, "Historical Clothing"),
    Made(("velox diamonds", "velox, diamonds"), 1907, 1907, 1914, 1914, "Historical Clothing"),
    Made(("velox squares", "velox, squares"), 1901, 1901, 1914, 1914, "Historical Clothing"),
    Made(("velox triangles", "velox, triangles"), 1909, 1909, 1914, 1914, "Historical Clothing"),
    Made(("stamp box cyko", "cyko"), 1904, 1904, 1920, 1929, "Historical Clothing"),
    Made(("stamp box artura", "artura"), 1910, 1910, 1924, 1924, "Historical Clothing"),
    Made(("stamp box argo",), 1905, 1905, 1920, 1920, "Historical Clothing"),
    Made(("stamp box noko", "noko"), 1907, 1907, 1920, 1929, "Historical Clothing"),
    Made(("stamp box kruxo", "kruxo"), 1907, 1907, 1920, 1929, "Historical Clothing"),
    Made(("stamp box solio",), 1903, 1903, 1920, 1929, "Historical Clothing"),
    Made(("stamp box dops", "dops"), 1925, 1925, 1942, 1942, "Historical Clothing"),
    Made(("stamp box vitava", "vitava"), 1925, 1925, 1934, 1934, "Historical Clothing"),
    Made(("stamp box defender, diamond above and below",), 1910, 1910, 1920, 1920, "Historical Clothing"),
    Made(("stamp box defender, diamond inside",), 1920, 1920, 1940, 1940, "Historical Clothing"),
    Made(("stamp box ekc",), 1939, 1939, 1950, 1950, "Historical Clothing"),
    Made(("stamp box eko",), 1942, 1942, 1970, 1970, "Historical Clothing"),
    Made(("stamp box ansco",), 1930, 1940, 1960, 1960, "Historical Clothing"),
    Made(("stamp box devolite",), 1950, 1950, 0, 0, "Historical Clothing"),
    # what stands on a back
    Made(("revenue stamp",), 1864, 1864, 1866, 1866, "United States, Act of 30 June 1864, in force for photographs to 1 August 1866; Lost Faces, Using Revenue Stamps to Date Photographs", "United States"),
    Made(("zip code",), 1963, 1967, 0, 0, "United States Post Office Department: from 1 July 1963 (National Public Radio)", "United States"),
)  # fmt: skip

BACK = re.compile(
    r"\b(?:back|backs|backside|reverse|ruckseite\w?|tagakul\w*|dos|verso|dorso|rovescio|baksid\w*|bagsid\w*|achterkant|achterzijde|"
    r"takapuol\w*|оборот\w*|rewers\w*|odwroc\w*)\b"
)
"""How the back of a postcard is called, folded; ours, common practice, no source."""
BACKS: tuple[tuple[str, re.Pattern[str]], ...] = (
    (
        "undivided back",
        re.compile(
            r"\b(?:undivided|not (?:yet )?divided|(?:no|without a?) ?(?:dividing |vertical |centre |center |middle )?line|(?:only the|just the) "
            r"address|address (?:side )?only|for the address (?:only|alone)|nur (?:fur )?die (?:adresse|anschrift)|ungeteilt\w*|ohne "
            r"(?:trennlinie|trennstrich|mittellinie)|jagamata|ilma jooneta|non divise|non diviso|sin dividir|nao dividido|odelad|udelt|"
            r"ongedeelde?)\b"
        ),
    ),
    (
        "divided back",
        re.compile(
            r"\b(?:divided|split (?:in two|back)|dividing line|line (?:down|through|in) (?:the|its) (?:middle|centre|center)|vertical line|"
            r"(?:centre|center|middle) line|correspondence\b.*\baddress|message\b.*\baddress|address\b.*\b(?:message|correspondence)|geteilt\w*|"
            r"trennlinie|trennstrich|mittellinie|jagatud|poolitatud|joon keskel|divise|correspondance|dividido|diviso|delad|delt|gedeelde?)\b"
        ),
    ),
)
"""How it is told, folded, that a back is divided or not, with the row of `OBJECTS`."""

"""The words that tell who took a picture, folded (`core.statements.fold`), of every language together.

Common practice of captions, from memory; no source.
"""

TAKEN = frozenset(
    "photographed taken snapped shot aufgenommen fotografiert geknipst pildistatud photographie photographiee prise pris "
    "fotografiado fotografiada tomada tomado sacada hecha tirada tirado fotografado scattata scattato fotografata fotografato "
    "genomen gefotografeerd gemaakt taget fotograferet tatt tatte fotografert tagen taget fotograferad ottama kuvaama "
    "kuvannut ottanut снято снят снята сделано zrobione zrobiona wykonane uznemts fotografets nufotografuota vyfoceno foceno "
    "fotografovano fenykepezte gemacht geschossen pildistanud teinud fait faite hecho fatto fatta feita gjort sacado".split()
)
"""`taken`, of a picture."""

PICTURE = frozenset(
    "photo photos photograph photography picture pic snap snapshot shot foto fotos fotografie aufnahme bild pilt photographie "
    "cliche fotografia retrato billede bilde bilden bildet kuva valokuva фото снимок фотография zdjecie fotka fotografija "
    "snimek fenykep ljosmynd pildi pilte pildid kuvan kuvat valokuvan fotot fotoa billedet billeder billedene bildene kort kortet "
    "fotku fotky fotografiju bildi nuotrauka nuotraukas fotografin plaatje снимки фотографию fotografias".split()
)

HANGS_ON = frozenset(
    "wall piano mantelpiece mantel shelf dresser sideboard frame framed locket wand klavier kommode rahmen seinal seinas "
    "mur cheminee cadre pared marco parete cornice parede moldura muur lijst vaeg vaeggen veggen vaggen ramme ram seinalla "
    "стене рамке scianie ramce stene ramecku sienas sienos falon".split()
)
"""Where a picture hangs or stands that is seen in the picture."""

TAKER = frozenset(
    "photographer fotograf fotografin fotograaf photographe fotografo fotografa valokuvaaja kuvaaja kuvannut фотограф "
    "fotografs fotografe fotografas fotografka fenykepesz ljosmyndari camera kamera".split()
)

TOOK = frozenset(
    "kuvannut valokuvannut pildistanud took takes snapped photographed shot pildistas pildistab fotografierte knipste schoss machte aufnahm nahm tegi "
    "photographia fotografio tomo saco hizo tirou fotografou scatto fotografo maakte nam fotografeerde tog tok fotograferede "
    "fotograferte fotograferade otti kuvasi valokuvasi снимал снимала снял сняла фотографировал фотографировала "
    "сфотографировал сфотографировала fotografowal fotografowala robil robila zrobil zrobila fotografeja uznema nufotografavo fotografavo "
    "vyfotil vyfotila fotil fotila fotografoval fotografovala fenykepezte".split()
)
TOOK_ALONE = frozenset(
    "kuvannut valokuvannut pildistanud pildistas pildistab fotografierte knipste kuvasi valokuvasi снимал снимала снял сняла фотографировал фотографировала "
    "сфотографировал сфотографировала fotografowal fotografowala fotografeja nufotografavo fotografavo vyfotil vyfotila fotil "
    "fotila fotografoval fotografovala fenykepezte fotografeerde fotograferade fotograferede fotograferte fotografou".split()
)
"""Those that say of themselves what was done; behind the others the picture must be told."""

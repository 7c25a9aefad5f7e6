"""Things that begin or end with a name: WordNet 3.0; made by make_compounds.py beside the tests."""

THINGS = """
aare: river, rivers
aire: river, rivers
al: aksa martyrs brigades, alamayn, alamayns, aqabah, aqabahs, faran, farans, gamaa al islamiyya, itihaad al islamiya, jamaa al islamiyyah al muqatilah bi libya, ladhiqiyah, ladhiqiyahs, madinah, madinahs, nathir, nathirs, qahira, qahiras, qanoon, qanoons, sunna wal jamma, tawhid, tawhids
alex: boncayao brigade
alexander: archipelago, archipelagos
alma: mater, maters
amber: lily
angel: cake, dust, falls, food cake, shark, wing begonia
angelica: archangelica, archangelicas, sylvestris
ann: arbor, arbors
april: fools, fools day
arno: river, rivers
arnold: chiari deformity
art: class, collection, collections, deco, decos, department, departments, exhibition, exhibitions, form, gallery, history, movement, movements, nouveau, nouveaus, object, paper, rock, school
asa: dulcis
ash: bin, cake, can, gray, grey, leaved maple, tree, wednesday
august: plum, plums
aurora: australis, borealis
autumn: crocus, pumpkin, pumpkins, sneezeweed, sneezeweeds
barber: chair
basil: balm, balms, mint, thyme, thymes
bay: grass, leaf, leaved caper, lynx, of bengal, of biscay, of campeche, of fundy, of naples, of ob, rum, rum tree, rums, scallop, state, tree, window, windows, wreath, wreaths
bell: apple, apples, arch, book, buoy, cot, cote, cotes, cots, deck, foundry, gable, gables, glass, heather, heathers, jar, like call, magpie, magpies, metal, morel, morels, pepper, push, ringing, ringings, seat, shape, shaped curve, tent, toad, toads, tower
bella: sombra, sombras
belle: de nuit, isle cress
ben: sira, siras
benjamin: bush
bill: of attainder, of entry, of exchange, of fare, of goods, of health, of indictment, of lading, of particulars, of review, of rights, of sale
billy: buttons, club, goat, goats
bird: cherry, cherry tree, dog, feed, feeder, feeders, food, foods, footed dinosaur, louse, louses, nest, of jove, of juno, of minerva, of night, of paradise, of prey, pepper, sanctuary, shot, shots, vetch
bishop: pine
black: africa, africas, and gold garden spider, and tan coonhound, and tan terrier, and white, apricot, apricots, archangel, archangels, art, arts, ash, backed gull, bamboo, bamboos, bass, bead, bean, bear, bearberry, bee, beech, bees, bile, biles, billed cuckoo, bindweed, bindweeds, birch, body, body radiation, book, box, bread, bream, bryony, buck, buffalo, calla, callas, capped chickadee, caraway, carpet beetle, cat, catechu, catechus, cherry, cherry tree, cock, cohosh, comedy, cottonwood, cottonwoods, crappie, crappies, crowned night heron, currant, currants, cypress pine, death, deaths, diamond, diamonds, disease, diseases, duck, economy, elder, elderberry, elders, english, english vernacular, eye, eyed pea, eyed susan, eyed susan vine, felt cup, flag, fly, footed albatross, footed ferret, forest, fox, fritillary, fronted bush shrike, grama, gramas, greasewood, greasewoods, grouse, guillemot, guillemots, gum, hand, haw, headed snake, hellebore, hellebores, hemlock, hemlocks, henbane, henbanes, hickory, hills, hole, hole of calcutta, hollander, hollanders, horehound, horehounds, huckleberry, humor, humour, ice, kite, knapweed, knapweeds, knot, larch, lead, legged tick, letter, locust, locusts, lotion, lotions, lovage, lovages, lung, lung disease, lungs, magic, magics, mallee, mallees, mamba, mambas, mangrove, mangroves, margate, margates, market, marlin, marlins, medick, medicks, morel, morels, moss, mulberry, music, musics, mustard, mustards, necked cobra, necked grebe, necked stilt, necked stork, nightshade, nightshades, oak, oaks, olive, olives, opal, opals, operation, operations, panthers, pea, peas, pepper, pine, plague, poplar, poplars, pudding, puddings, racer, racers, raspberry, rat, rat snake, rhinoceros, rock desert, rockweed, rockweeds, root rot fungus, rot, rudderfish, sage, sages, salsify, saltwort, saltworts, sea, sea bass, seas, september, september movement, septembers, snakeroot, snakeroots, spleenwort, spleenworts, spot, spruce, squirrel, squirrels, stem spleenwort, stemmed spleenwort, stork, storks, sumac, sumacs, swan, tai, tailed deer, tais, tea, teas, tie, tongue, tree fern, turnstone, turnstones, vernacular, vernacular english, vernaculars, vomit, vulture, vultures, walnut, walnut tree, walnuts, wattle, weevil, weevils, whale, widow, winged stilt
blanc: fixe, fixes
bobby: pin
box: beam, calf, calfs, camera, cameras, coat, elder, elders, end wrench, girder, girders, huckleberry, kite, kodak, kodaks, number, office, offices, pleat, seat, spring, tortoise, tortoises, turtle, white oak, wrench
briar: pipe
brook: thistle, thistles, trout, trouts
brooklyn: bridge
brown: algae, algaes, ash, bat, bear, bells, bent, bents, bread, bullhead, bullheads, butter, coal, creeper, creepers, cup, hickory, hyena, hyenas, lacewing, lacewings, lemming, lemmings, oak, oaks, onion sauce, pine, rat, rice, root rot fungus, rot, rot gummosis, sauce, snail, soft scale, study, sugar, swiss, tail moth, thrasher, thrashers, thrush, trout, trouts, university
buck: fever, fevers
bud: brush, sagebrush
bush: administration, administrations, baby, bean, clover, clovers, hibiscus, honeysuckle, honeysuckles, jacket, lawyer, lawyers, league, nasturtium, nasturtiums, pea, peas, poppy, shrike, shrikes, tit, tits, vetch, violet, violets
candy: apple, apples, bar, cane, corn, egg, kiss, store, thermometer, thermometers
captain: hicks
carina: fornicis
carolina: allspice, allspices, buckthorn, buckthorns, chickadee, chickadees, hemlock, hemlocks, jasmine, jasmines, lupine, lupines, moonseed, moonseeds, parakeet, parakeets, pond fern, spring beauty
caroline: islands
carpenter: ant, ants, bee, bees
catherine: wheel
chance: event, events, half correlation, variable, variables
charity: shot, shots, throw, toss
charles: river, rivers
charlotte: russe, russes
chip: shot, shots
christian: bible, bibles, church, era, eras, holy day, liturgy, name, religion, religions, science, sciences, theology, year, years
chuck: short ribs, wagon, wagons
church: bell, bench, building, buildings, calendar, doctrine, doctrines, festival, festivals, hat, key, mode, modes, mouse, music, musics, of christ scientist, of england, of ireland, of jesus christ of latter day saints, of rome, of scientology, of the brethren, property, roll, school, service, slavic, slavics, tower, year, years
clay: colored robin, pigeon, pigeons, pipe, sculpture
clementine: tree
cliff: brake, diving, divings, dwelling, dwellings, penstemon, penstemons, rose, roses, swallow
con: game
constant: of gravitation, of proportionality, quantity, width font
cook: strait, straits
cooper: union, union for the advancement of science and art, unions
coral: bean, bean tree, bush, drops, fungus, gem, gems, honeysuckle, honeysuckles, necklace, necklaces, pea, peas, reef, root, root bittercress, sea, seas, snake, tree, vine, vines
cross: bit, bits, bun, buns, country, country jumping, country riding, country skiing, dressing, dressings, florida waterway, hair, hairs, infection, infections, leaved heath, of calvary, of lorraine, product, products, section, street, streets, thwart, vine, vines, wire
crystal: ball, counter, detector, detectors, gazing, gazings, lattice, lattices, microphone, microphones, oscillator, oscillators, pickup, pickups, rectifier, rectifiers, set, tea, teas, violet, violets
cynthia: moth, moths
daisy: bush, chain, cutter, cutters, fleabane, fleabanes, leaved grape fern, print wheel, wheel
daphne: cneorum, cneorums, laureola, laureolas, mezereum, mezereums
davy: jones, joness locker, lamp, lamps
dawn: horse, redwood, redwoods
day: bed, blindness, book, camp, care, care center, game, jessamine, jessamines, lily, nursery, of atonement, of judgement, of judgment, of reckoning, of remembrance, of rest, of the month, of the week, off, return, school, shift, watch
des: moines
dick: test
dien: bien phu
dita: bark
don: river, rivers
donald: duck
dot: com, com company, coms, matrix, matrix printer, printer, printers, product, products
douglas: fir, firs, hemlock, hemlocks, pine, spruce, squirrel, squirrels
elizabeth: river, rivers
em: quad, quads
emilia: coccinea, coccineas, flammea, flammeas, javanica, javanicas, sagitta, sagittas
erica: arborea, arboreas, carnea, carneas, cinerea, cinereas, lusitanica, lusitanicas, perspicua, perspicuas, tetralix, vagans
eugenia: aromaticum, aromaticums, caryophyllatum, caryophyllatums, corynantha, corynanthas, dicrana, dicranas, jambos, uniflora, unifloras
faith: cure, healing, healings
fanny: adams, pack
farmer: labor party
ferdinand: and isabella
fern: ally, palm, rhapis, seed
field: artillery, balm, balms, bean, bindweed, bindweeds, brome, bromes, capacity, chamomile, chamomiles, chickweed, chickweeds, coil, corn, cricket, crop, day, effect transistor, emission, emission microscope, emissions, event, events, game, garlic, garlics, glass, glasses, goal, goals, guide, gun, hockey, hockey ball, horsetail, horsetails, hospital, hospitals, house, hut, huts, intensity, lens, lupine, lupines, magnet, magnets, maple, maples, mint, mouse, mouse ear, mushroom, mustard, mustards, of battle, of fire, of force, of honor, of operation, of operations, of regard, of study, of view, of vision, pansy, pea, pea plant, peas, pennycress, poppy, press censorship, pussytoes, ration, sandbur, sandburs, scabious, sequential color television, sequential color television system, sequential color tv, sequential color tv system, soybean, soybeans, spaniel, spaniels, sparrow, sparrows, speedwell, speedwells, sport, strength, strength unit, strengths, tent, test, theory, thistle, thistles, trial, trials, trip, winding, windings, work, wormwood, wormwoods
fisher: cat
florence: fennel, fennels
forest: fire, goat, goats, red gum, tent caterpillar
fox: grape, grapes, hole, hunting, huntings, river, rivers, shark, squirrel, squirrels, terrier, terriers
francis: turbine, turbines
franco: prussian war
frank: breech, breech delivery
freddie: mac, macs
garden: balm, balms, cart, centipede, centipedes, chair, cress, current, currents, egg, forget me not, heliotrope, heliotropes, hose, huckleberry, lettuce, lettuces, loosestrife, loosestrifes, nasturtium, nasturtiums, of eden, orache, oraches, party, pea, pea plant, peas, pepper cress, pink, plant, rake, rhubarb, rhubarbs, rocket, roller, rollers, snail, sorrel, sorrels, spade, spider, spiders, state, strawberry, symphilid, symphilids, tool, trowel, truck, violet, violets, webworm, webworms
gay: lib, liberation movement, libs, lussacs law
gene: chip, delivery vector, expression, expressions, linkage, linkages, mutation, mutations
george: town, towns, washington bridge
georgia: bark, home boy, pine
gilbert: and ellice islands, and sullivan, islands
ginger: ale, ales, beer, beers, nut, pop, snap
glen: canyon dam
gordon: setter, setters
grace: cup, note, of god
graham: bread, cracker, crackers, flour
gray: alder, alders, area, areas, birch, catbird, catbirds, flounder, fox, goldenrod, goldenrods, hen, hens, jay, kingbird, kingbirds, lemming, lemmings, market, matter, mullet, mullets, partridge, partridges, polypody, poplar, poplars, sage, sages, sea eagle, skate, snapper, snappers, sole, substance, substances, whale, wolf
green: adders mouth, alder, alders, algae, algaes, apple aphid, arrow arum, ash, bay, bean, bristlegrass, broom, card, corn, dinosaur, dinosaurs, dragon, dragons, eyed monster, fingers, foxtail, foxtails, fringed orchis, frog, gentian, gentians, gland, glands, goddess, gold, golds, goods, gram, grams, groceries, hellebore, hellebores, june beetle, lacewing, lacewings, lead ore, light, lizard, lizards, mamba, mambas, manure, market, mayonnaise, mayonnaises, monkey, monkey disease, mountain state, mountains, mushroom pimple, olive, olives, onion, onions, paper, party, pea, pea soup, peach aphid, peafowl, peafowls, peas, pepper, plover, plovers, revolution, revolutions, river, rivers, salad, salads, smut, smut fungus, snake, soap, soybean, soybeans, spleenwort, spleenworts, tailed towhee, tea, teas, thumb, turtle, turtle soup, winged teal, woodpecker, woodpeckers
grey: alder, alders, area, areas, birch, catbird, catbirds, flounder, fox, goldenrod, goldenrods, hen, hens, jay, kingbird, kingbirds, leaf pine, lemming, lemmings, market, matter, mullet, mullets, partridge, partridges, polypody, poplar, poplars, sage, sages, sea eagle, skate, snapper, snappers, sole, substance, substances, whale, wolf
gross: anatomy, domestic product, estate, estates, margin, margins, national product, profit, profit margin, revenue, revenues, sales, ton, tons
guadalupe: cypress, fur seal, island, islands, mountains, mountains national park
guy: cable, fawkes day, fawkes night, rope, wire
hall: of fame, of residence, pass
hank: panky
hazel: alder, alders, mouse, tree
heath: aster, asters, hen, hens, pea, peas, violet, violets
heather: bell, mixture, mixtures
herb: bennet, bennets, garden, mercury, of grace, paris, tea, teas
hill: myna, mynas
holland: gin
holly: fern, ferns, leaf cherry, leaved cherry, leaved oak, leaves barberry
honor: killing, killings, system, systems
hope: chest, chests
house: arrest, cat, centipede, centipedes, finch, fly, mouse, of burgesses, of cards, of commons, of correction, of detention, of god, of hanover, of ill repute, of islam, of lancaster, of lords, of prayer, of prostitution, of representatives, of tudor, of war, of windsor, of worship, of york, organ, organs, paint, painting, paintings, party, snake, sparrow, sparrows, trailer, trailers
hunt: club
inga: edulis, laurina, laurinas
iris: cristata, cristatas, diaphragm, diaphragms, filifolia, filifolias, florentina, florentinas, foetidissima, foetidissimas, germanica, germanica florentina, germanicas, kaempferi, kaempferis, kochii, kochiis, pallida, pallidas, persica, persicas, pseudacorus, scanning, scannings, tingitana, tingitanas, verna, vernas, versicolor, versicolors, virginica, virginicas, xiphioides, xiphium, xiphiums
ivy: arum, arums, geranium, geraniums, league, leaved geranium
jack: bean, crevalle, crevalles, ladder, mackerel, mackerels, o lantern fungus, oak, oaks, pine, plane, salmon, salmons
jade: green, vine, vines
jakob: creutzfeldt disease
james: bay, river, rivers
jasmine: tobacco, tobaccos
jeffrey: pine
jenny: ass
jim: crow
job: action, application, applications, control, control language, description, descriptions, interview, lot, oriented terminal
jock: itch
joe: pye weed
john: barleycorn, barleycorns, dory
johnny: cake
jordan: almond, almonds, curve, river, rivers
joshua: tree
julian: calendar
june: beetle, bug, grass
justice: department, departments
king: arthurs round table, begonia, begonias, cobra, cobras, crab, devil, fern, ferns, mackerel, mackerels, nut, nut hickory, of beasts, of the herring, orange, oranges, penguin, penguins, post, protea, proteas, salmon, salmons, snake, vulture, vultures, whiting, whitings
kit: and boodle, and caboodle, bag, fox
kitty: litter
klein: bottle
knight: errantry
lake: aral, arals, baikal, baikals, balaton, balatons, baykal, baykals, bed, bottom, canandaigua, canandaiguas, cayuga, cayugas, chad, chads, champlain, champlains, chelan, chelans, clark national park, district, duck, dwelling, dwellings, erie, eries, eyre, eyres, geneva, genevas, herring, herrings, huron, hurons, ilmen, ilmens, keuka, keukas, kivu, kivus, ladoga, ladogas, leman, lemans, malawi, malawis, mead, meads, michigan, michigans, nasser, nassers, nyasa, nyasas, okeechobee, okeechobees, onega, onegas, ontario, ontarios, poets, powell, powells, saint clair, salmon, salmons, seneca, senecas, superior, superiors, tahoe, tahoes, tana, tanas, tanganyika, tanganyikas, trasimenus, trout, trouts, tsana, tsanas, urmia, urmias, vanern, vanerns, victoria, victorias, volta, voltas, whitefish, winnipeg, winnipegs
laurel: and hardy, cherry, oak, oaks, sumac, sumacs, wreath, wreaths
lee: side, tide
lena: river, rivers
leo: the lion
letter: bomb, bond, box, case, of credit, of intent, of jeremiah, of mark and reprisal, of marque, of the alphabet, opener, openers, paper, security, stock, telegram, telegrams
lewis: and clark expedition
lily: of the incas, of the nile, of the valley, of the valley tree, pad, turf
line: at a time printer, block, double, drawing, drawings, drive, drive double, drive single, drive triple, engraving, engravings, feed, item, items, management, managements, of battle, of business, of control, of credit, of defence, of defense, of descent, of destiny, of duty, of fate, of fire, of flight, of force, of gab, of heart, of inquiry, of latitude, of least resistance, of life, of longitude, of march, of merchandise, of poetry, of products, of questioning, of reasoning, of saturn, of scrimmage, of sight, of succession, of thought, of verse, of vision, of work, organisation, organisations, organization, organizations, personnel, personnels, printer, printers, roulette, roulettes, score, single, spectrum, spectrums, squall, storm, triple
little: auk, auks, barley, bear, bighorn, bighorn river, bighorns, black ant, blue heron, brown bat, brown myotis, chief hare, club moss, clubmoss, dictionary, dipper, dippers, dog, ebony spleenwort, egret, egrets, finger, golden zinnia, grebe, grebes, hand, head snakeweed, horn, leaf fig, league, league team, missouri, missouri river, missouris, office, offices, owl, owls, potato, potatos, rhody, rock, sioux river, skate, slam, spotted skunk, theater, theaters, theatre, theatres, toe, wabash, wabash river
london: plane
long: beach, beech fern, billed marsh wren, bone, chain, chain molecule, clawed prawn, distance, distance call, division, divisions, dozen, dozens, eared bat, eared owl, fin tunny, fly, handled spade, haul, head coneflower, horned beetle, horned grasshopper, horse, hundred, hundreds, hundredweight, hundredweights, iron, island, island sound, islands, johns, jump, measure, moss, neck clam, pants, pepper, pillow, plane, run, saphenous vein, sleeve, sleeves, spurred violet, staple cotton, suit, tailed porcupine, tailed weasel, term memory, time, ton, tons, trousers, underwear, underwears, wave, whist, whists
lorenzo: dressing, dressings
lou: gehrigs disease
louis: dor, dors
lucy: in the sky with diamonds
ludi: saeculares
magdalena: river, rivers
magnus: hitch
maja: squinado, squinados
major: affective disorder, axis, depressive episode, diatonic scale, fast day, form class, key, league, league club, league team, lobe, lobes, mode, modes, planet, planets, power, premise, premiss, scale, suit, surgery, term, tranquilizer, tranquilizers, tranquilliser, tranquillisers, tranquillizer, tranquillizers
mal: de la rosa, de mer, rosso, rossos
malcolm: stock
manuel: rodriquez patriotic front
mare: clausum, clausums, liberum, liberums, nostrum, nostrums
marguerite: daisy
mariana: islands
marie: strumpell disease
marine: animal, animals, archaeology, archeology, corps, corps intelligence activity, creature, creatures, glue, iguana, iguanas, law, laws, mine, museum, museums, mussel, mussels, turtle
mark: of cain
marsh: andromeda, andromedas, bellflower, bellflowers, buggy, clematis, cress, elder, elders, felwort, felworts, fern, ferns, gas, gentian, gentians, hare, harrier, harriers, hawk, hen, hens, horsetail, horsetails, mallow, mallows, milkweed, milkweeds, orchid, orchids, pea, peas, pink, plant, st johns wort, tea, teas, trefoil, trefoils
marten: cat
martin: luther king day, luther king jrs birthday
mason: and dixon line, and dixons line, bee, bees, city, dixon line, jar, wasp, wasps
matthew: walker, walker knot, walkers
may: apple, apples, beetle, blob, bug, day, fish, lily, wine
melissa: officinalis
melody: pipe
mercy: killing, killings, seat
mickey: mouse
minnie: bush, mouse
molly: miller, millers
moon: blindness, carrot, carrots, daisy, ray, shell, shot, shots, trefoil, trefoils
morgan: city
morris: chair, dance, dancing, dancings
moss: agate, agates, animal, animals, campion, campions, locust, locusts, phlox, pink
mother: board, careys chicken, careys hen, cell, cells, country, hubbard, hubbards, in law plant, in laws tongue, lode, lodes, of pearl cloud, of thyme, tongue, wit, wits
murray: river, rivers
myrtle: beech, bird, flag, oak, oaks, spurge, spurges, warbler, warblers
nan: ling, lings, river, rivers
nina: from carolina
noah: and the flood
norman: architecture, architectures, conquest, conquests, french
number: agreement, agreements, crunching, crunchings, one wood, representation system, system, systems
olive: branch, brown, drab, drab uniform, drabs, green, oil, ridley, tree, tree agaric
opal: glass
paddy: field, wagon, wagons
page: at a time printer, number, printer, printers
pansy: orchid, orchids, violet, violets
paris: daisy, green, quadrifolia, quadrifolias, university
park: avenue, avenues, bench
parsons: nose, table
pascal: celery, compiler, compilers
patty: shell
pauli: exclusion principle
paulo: afonso, afonso falls, afonsos
pearl: ash, barley, fishery, harbor, hominy, millet, millets, oyster, river, rivers, sago, sagos
peg: top
penny: arcade, arcades, bank, dreadful, dreadfuls, grass, stock
per: capita income, centum, centums, diem, diems
peregrine: falcon
peter: pan collar
petit: dejeuner, dejeuners, four, fours, jury, larceny, point
petunia: axillaris, hybrida, hybridas, integrifolia, integrifolias
phoebe: bird
photo: credit, finish, offset printing, op, opportunity, ops
pia: mater, maters
picture: book, card, element, elements, frame, gallery, hat, palace, palaces, plane, postcard, postcards, rail, show, taking, takings, tube, window, windows, writing, writings
pierre: laporte bridge
pilar: cyst, cysts
pina: cloth, cloths, colada, coladas
place: bet, kick, mat, name, of birth, of business, of origin, of worship, setting, settings
poll: parrot, tax
polly: fish
pond: apple, apple tree, apples, bald cypress, cypress, lily, pine, scum, scum parasite
pool: ball, cue, stick, table
poppy: day, mallow, mallows, seed
potter: bee, bees, wasp, wasps
price: bracket, competition, competitions, control, cut, cutting, cuttings, floor, freeze, gouging, gougings, increase, index, level, list, of admission, reduction, reductions, support, tag, to earnings ratio, war
primrose: jasmine, jasmines, path, paths
prince: alberts yew, of wales feather, of wales fern, of wales heath, of wales plume
print: buffer, media, medias, run, shop
prune: cake, whip
ray: floret, florets, flower, of light
reed: bunting, buntings, canary grass, grass, instrument, mace, maces, meadow grass, organ, organs, pipe, rhapis, section, stop
rein: orchid, orchids, orchis
rex: begonia, begonias
rich: people
river: acheron, acherons, adige, adiges, avon, avons, basin, basins, birch, blindness, boat, bottom, boulder, boulders, cam, cams, cocytus, cooter, cooters, dolphin, dolphins, gum, horse, kasai, kasais, lethe, lethes, limpet, limpets, otter, otters, pear, pears, prawn, red gum, severn, severns, shad, shads, styx, thames, trent, trents, tyne, tynes
robert: e lee day, e lees birthday
robin: redbreast, redbreasts
rod: cell, cells
roman: a clef, alphabet, alphabets, arch, architecture, architectures, basilica, basilicas, building, buildings, calendar, candle, catholic church, catholicism, catholicisms, church, collar, coriander, corianders, empire, empires, fleuve, fleuves, hyacinth, hyacinths, inquisition, inquisitions, law, laws, legion, legions, letters, mile, miles, mythology, nettle, nose, numeral, numerals, pace, print, republic, republics, times, type, wormwood, wormwoods
rosa: banksia, banksias, canina, caninas, chinensis, damascena, damascenas, eglanteria, eglanterias, laevigata, laevigatas, moschata, moschatas, multiflora, multifloras, odorata, odoratas, pendulina, pendulinas, spithamaea, spithamaeas
rose: acacia, acacias, apple, apple tree, apples, bay, bed, beetle, bug, campion, campions, chafer, chafers, chestnut, chestnuts, colored pastor, colored starling, garden, geranium, geraniums, globe lily, gum, hip, hips, leek, leeks, mallow, mallows, moss, of china, of jericho, of sharon, oil, periwinkle, periwinkles, pink, quartz, quartzs, water, window, windows, wine
ross: sea, seas
rowan: tree
ruby: crowned kinglet, crowned wren, spinel, spinels, wood, woods
rusty: blackbird, blackbirds, grackle, grackles, rig, woodsia, woodsias
ruta: graveolens
sabine: pine, river, rivers
sal: ammoniac, ammoniacs, soda, sodas, volatile, volatiles
sally: lunn, lunns
sam: browne belt
sandy: mushroom
santiago: de chile, de cuba, de los caballeros
savannah: river, rivers
scout: car, cars, group, troop
sharp: tailed grouse, tongue
shepherd: dog
short: account, aria, arias, billed marsh wren, bone, circuit, covering, coverings, division, divisions, gastric artery, horned grasshopper, hundredweight, hundredweights, iron, leaf pine, letter, list, pants, ribs, sale, sales, saphenous vein, selling, sellings, shrift, shrifts, sleep, sleeve, sleeves, spurred fragrant orchid, staple cotton, stop bath, story, subject, tailed shrew, temper, term memory, toed eagle, ton, tons, wave, whist, whists
si: system, systems, unit, units
silvia: atricapilla, atricapillas
sister: ship
skip: distance, rope
sky: burial, burials, glow, wave
sol: rojo, rojos
soledad: pine
solomon: islands
spring: balance, beauty, break, cankerworm, cankerworms, cleavers, cress, equinox, frog, gun, heath, heaths, mattress, onion, onions, peeper, peepers, roll, scale, squill, squills, training, trainings, vetch, vetchling, vetchlings, water
stanley: steamer
stern: chaser, chasers
stone: age, bass, bramble, brambles, crab, cress, curlew, curlews, drill, facing, facings, fly, fruit, life face, mimicry plant, parsley, pine, pit, plant, root, wall
storm: cellar, cellars, center, centre, cloud, cone, door, doors, lamp, lamps, lantern, lanterns, petrel, petrels, sash, signal, troops, window, windows
street: address, clothes, corner, cred, credibility, creds, drug, lamp, lamps, name, organ, organs, sign, smarts, theater, theaters
summer: camp, cohosh, crookneck, crooknecks, cypress, damask rose, duck, flounder, haw, house, hyacinth, hyacinths, redbird, redbirds, savory, savoury, school, snowflake, snowflakes, solstice, solstices, squash, squash vine, stock, sweet, sweets, tanager, tanagers
susan: b anthony dollar
swan: dive, orchid, orchids, river daisy, river everlasting, song, songs
sydney: harbor bridge, silky
sylvia: communis, curruca, currucas
tansy: leaf aster, leaved rocket, mustard, mustards, ragwort, ragworts
teddy: bear, boys
terry: cloth, cloths, towel
theodore: roosevelt memorial national park
titi: monkey
title: bar, deed, deeds, of respect, page, role, roles
toby: fillpot jug, jug
tom: and jerry, collins, turkey
tommy: gun
tone: arm, deafness, ending, endings, language, languages, of voice, poem, poems, system, systems
trine: immersion, immersions
uta: stansburiana, stansburianas
valve: in head engine, rocker, rockers
vanda: caerulea, caeruleas
vanessa: atalanta, atalantas, virginiensis
vena: anastomotica, anastomoticas, angularis, appendicularis, arcuata renis, auricularis, axillaris, azygos, basalis, basilica, basilicas, basivertebralis, brachialis, brachiocephalica, brachiocephalicas, bronchialis, bulbi penis, bulbi vestibuli, canaliculi cochleae, cava, cavas, centrales retinae, centralis glandulae suprarenalis, cephalica, cephalica accessoria, cephalicas, cerebellum, cerebellums, cerebri, cerebri anterior, cerebri magna, cerebri media, cerebris, cerebrum internus, cerebrum superior, cervicalis profunda, choroidea, choroideas, circumflexa, circumflexa ilium, circumflexas, circumflexus femoris, clitoridis, colica, colicas, comitans, cutanea, cutaneas, cystica, cysticas, digitalis, diploica, diploicas, dorsalis clitoridis profunda, emissaria, emissarias, epigastrica inferior, epigastrica superficialis, ethmoidalis, facialis, facialis anterior, femoralis, gastrica, gastrica dextra, gastrica sinistra, gastricas, gastroomentalis, gluteus, hemiazygos accessoria, hemizygos, hepatica, hepaticas, ileocolica, ileocolicas, iliaca, iliacas, iliolumbalis, intercapitalis, intercostalis, intervertebralis, jugularis, labialis, labialis inferior, labialis superior, lacrimalis, laryngea, laryngeas, lienalis, lingualis, lumbalis, maxillaris, mesenterica, mesentericas, metacarpus, metatarsus, musculophrenica, musculophrenicas, nasalis externa, nasofrontalis, obliqua atrii sinistri, obturatoria, obturatorias, occipitalis, ophthalmica, ophthalmicas, ovarica, ovaricas, palatina, palatinas, paraumbilicalis, pectoralis, perforantis, pericardiaca, pericardiacas, peroneus, pharyngeus, phrenica, phrenicas, poplitea, popliteas, portae, portaes, posterior ventriculi sinistri, profunda penis, pulmanalis inferior, pulmonalis, pulmonalis superior, pylorica, pyloricas, radialis, rectalis, renalis, retromandibularis, sacralis, saphena, saphenas, scapularis dorsalis, scrotalis, sigmoideus, spinalis, sternocleidomastoidea, sternocleidomastoideas, stylomastoidea, stylomastoideas, subclavia, subclavias, sublingualis, supraorbitalis, supratrochlearis, temporalis, testicularis, thoracica, thoracicas, thoracoepigastrica, thoracoepigastricas, thyroidea, thyroideas, tibialis, trachealis, ulnaris, umbilicalis, vertebralis, vertebralis accessoria, vertebralis anterior, vesicalis, vestibularis, vorticosum, vorticosums
veronica: agrestis, americana, americanas, anagallis aquatica, arvensis, beccabunga, beccabungas, chamaedrys, michauxii, michauxiis, officinalis, peregrina, peregrinas, serpyllifolia, serpyllifolias
victoria: cross, day, de durango, falls, land, nyanza, nyanzas, plum, plums, sandwich, sponge
viola: arvensis, blanda, blandas, canadensis, canina, caninas, clef, clefs, conspersa, conspersas, cornuta, cornutas, da braccio, da gamba, damore, damores, ocellata, ocellatas, odorata, odoratas, pedata, pedatas, pubescens, reichenbachiana, reichenbachianas, rostrata, rostratas, striata, striatas, sylvatica, sylvaticas, tricolor, tricolor hortensis, tricolors
violet: flowered petunia, suksdorfia, suksdorfias, wood sorrel
virginia: beach, bluebell, bluebells, chain fern, cowslip, cowslips, creeper, creepers, crownbeard, crownbeards, deer, deers, fence, ham, mallow, mallows, oyster, pine, reel, serpentaria, serpentarias, serpentary, snakeroot, snakeroots, spring beauty, stock, strawberry, thimbleweed, thimbleweeds, waterleaf, waterleafs
walt: disney world, whitman bridge
weaver: finch
wendy: house
west: africa, african, africans, africas, bank, bengal, bengals, berlin, berlins, by north, by south, chadic, chadics, coast, coast hemlock, country, end, germanic, germanic language, germanics, germany, highland white terrier, indian cherry, indian jasmine, indian satinwood, indian smallpox, indian snowberry, indies, malaysia, malaysias, midland, midlands, nile encephalitis, nile encephalitis virus, nile virus, northwest, northwests, pakistan, pakistans, palm beach, point, side, southwest, southwests, sussex, tocharian, tocharians, virginia, virginias, wind, yorkshire, yorkshires
white: admiral, admirals, alder, alders, ant, ants, arsenic, arsenics, ash, aspen, aspens, avens, backlash, baneberry, basswood, basswoods, bead, bean, bedstraw, bedstraws, beech, beer, beers, bellied swallow, berry yew, birch, blood cell, blood corpuscle, book, bread, breasted nuthatch, broom, bryony, burgundy, cake, camas, campion, campions, cedar, cedars, cell, cells, chinned petrel, chocolate, chocolates, cinnamon, cinnamon tree, cinnamons, clover, clovers, coat hypertension, cockle, cohosh, corpuscle, corpuscles, crappie, crappies, croaker, croakers, crowned sparrow, currant, currants, cypress, cypress pine, daisy, dead nettle, dipladenia, dipladenias, dogs tooth violet, dogtooth violet, dwarf, dwarf star, elephant, elephants, elm, elms, faced hornet, fairy lantern, false indigo, feather, feldspar, feldspars, fir, firs, flag, footed mouse, fox, fringed orchid, fringed orchis, fritillary, fungus, globe lily, gold, golds, goods, headed stilt, heart hickory, heat, heather, heathers, hellebore, hellebores, honeysuckle, honeysuckles, horehound, horehounds, horse, horse nettle, house, knight, lead, lead ore, leather, leaved rockrose, leg, legs, lettuce, lettuces, lie, lily, lipped peccary, lotus, lung, lungs, lupine, lupines, madder, magic, magics, mallee, mallees, mallow, mallows, mangrove, mangroves, mans burden, mans foot, marlin, marlins, matsutake, matsutakes, matter, meat, meats, melilot, melilots, metal, milkweed, milkweeds, mountain ash, mulberry, mullein, mulleins, mullet, mullets, mustard, mustards, nile, niles, noise, oak, oaks, onion sauce, pages, paper, pelican, pelicans, pepper, perch, pine, pine blister rust, pine rust, plague, popinac, popinacs, poplar, poplars, potato, potato vine, potatos, pox, prairie aster, rayed mules ears, rhinoceros, rice, river, rivers, rocket, room, rumped shrike, russia, russias, rust, sage, sages, sale, sales, sanicle, sanicles, sauce, sea, seabass, seas, separatism, separatisms, shark, sheep, sheeps, silk cotton tree, slime mushroom, snakeroot, snakeroots, snapdragon, snapdragons, spanish broom, spruce, squire, stemmed filaree, stork, storks, stringybark, stringybarks, sturgeon, sturgeons, supremacy, sweet clover, tai, tail, tailed deer, tailed jackrabbit, tailed kite, tailed sea eagle, tais, thistle, thistles, throated sparrow, tie, tie and tails, tipped shark, topped aster, trumpet lily, turnip, turnips, violet, violets, vitriol, walnut, walnuts, water, wax tree, whale, wine, wolf, wood aster, yam, yams, zinnia, zinnias
will: power
william: and mary
willow: aster, asters, bell, oak, oaks, tree
winter: aconite, aconites, cherry, cress, crookneck, crookneck squash, crooknecks, currant, currants, fern, ferns, flounder, flowering cherry, hazel, hazels, heath, heaths, heliotrope, heliotropes, jasmine, jasmines, melon, melon vine, melons, mushroom, olympic games, olympics, purslane, purslanes, rose, roses, savory, savoury, solstice, solstices, squash, squash plant, sweet, sweets, urn, urns
wolf: bean, cub, fish, pack, pup, spider, spiders
wood: alcohol, alcohols, anemone, anemones, ant, ants, aster, asters, avens, block, chisel, coal, cudweed, cudweeds, drake, drakes, duck, engraving, engravings, fern, ferns, file, frog, garlic, garlics, grain, hen, hens, hoopoe, hoopoes, horsetail, horsetails, hyacinth, hyacinths, ibis, lily, meadowgrass, mint, mouse, nettle, pewee, pewees, pigeon, pigeons, poppy, pulp, pussy, rabbit, rat, sage, sages, shavings, sorrel, sorrels, spirit, spurge, spurges, stork, storks, strawberry, sugar, swallow, tar, thrush, tick, vinegar, vinegars, violet, violets, vise, vises, warbler, warblers, widgeon, widgeons
woods: alloy, metal
wren: warbler, warblers
young: bird, carnivore, carnivores, fish, mammal, mammals
"""
"""The first word, and what may follow it, folded and without apostrophes, line by line."""

ENDS = """
aare river, abies alba, abrading stone, abstract art, abukir bay, acanthus family, accent mark, acrocarpous moss,
actaea alba, actinic ray, adders fern, adjutant bird, admission day, admission price, adobe house, adobe lily, african
daisy, african gray, african grey, african holly, african lily, african violet, agathis alba, agave family, agenda
item, agrostis alba, air lane, air letter, air spring, airmail letter, alabama river, alarm bell, algebraic number,
allegheny river, alms box, aloe family, aloe vera, alpha ray, alpine ash, amaranth family, amaryllis family, amazon
river, american hazel, american holly, american ivy, american olive, american robin, amphibian family, amur river,
amusement park, angara river, angelus bell, anglican church, animal black, annual fern, annunciation day, annunciation
lily, anseriform bird, ant bird, aortic valve, apalachicola river, apartment house, apatura iris, apodiform bird,
appropriation bill, aquatic bird, aquatic fern, arabian jasmine, araguaia river, araguaya river, araucaria family,
arbor day, arctic fox, arctic moss, arctic poppy, arctic wolf, argonne forest, argun river, arizona ash, arkansas
river, armenian church, arminian church, armistice day, aroeira blanca, arrow wood, arrowroot family, arthropod
family, artificial lake, arum family, arum lily, ascension day, ash gray, ash grey, asking price, asparagus fern,
assembly hall, aster family, astrantia major, athletic field, atomic number, atrioventricular valve, auction house,
australian heath, autograph album, avalanche lily, avogadro number, avogadros number, aztec lily, baby bird, baby
rose, back street, bacteria family, baffin bay, bahia blanca, balas ruby, ball fern, ball field, ball valve, ballot
box, balsa wood, balsam family, baltimore bird, bamboo fern, banana family, bank bill, bankers bill, banksia rose,
baptist church, barberry family, barberton daisy, bargaining chip, barley candy, baryon number, baseball field, basket
ash, basket fern, bastard title, bastille day, batters box, beach heather, beach house, beacon hill, bead fern, beard
moss, bearded iris, beardless iris, bearing rein, beauty bush, bee house, beech family, beech fern, beer garden, beer
hall, beet green, begonia family, belgian shepherd, belladonna lily, belleau wood, bellflower family, belmont park,
bench mark, benefit album, bengal rose, bermuda lily, berry fern, beta ray, bewicks swan, bicuspid valve, bid price,
bighorn river, billiard hall, birch family, bird family, birthwort family, biscayne bay, bissextile day, bit field,
black art, black ash, black box, black buck, black forest, black fox, black letter, black moss, black olive, black
opal, black swan, blackberry bush, blackfoot daisy, bladder fern, bladder stone, bladdernut family, bladderwort
family, blarney stone, bleaching clay, block grant, block letter, blood lily, bloodwort family, blue ash, blue chip,
blue daisy, blue fox, blue green, blue jack, blue jasmine, blue jay, blue jean, blue marguerite, blue moon, blue
poppy, blue sky, blue stone, blueberry bush, bluish green, boarding house, boatswain bird, bog moss, bog rose,
boltzmanns constant, bone ash, bone black, boom box, borage family, boston fern, boston ivy, bosworth field, botanical
garden, bottle bill, bottle green, boulder clay, boulder fern, bow wood, bowling green, box family, box number, box
spring, boxing day, boysenberry bush, bracelet wood, brahmaputra river, brain coral, bramble bush, brass family,
brazos river, breathing place, breeds hill, bride price, brinell number, bristle fern, brittle bush, brittle fern,
brokerage house, broomrape family, brown ash, brush wolf, bryonia alba, buckbean family, buckler fern, buckthorn
family, buckwheat family, buffalo chip, bulblet fern, bulbous iris, bull bay, bumper jack, bunker hill, bur reed, burn
mark, burning bush, burnt sienna, bus lane, bush poppy, bush violet, business letter, butter daisy, buttercup family,
butterfly bush, butterfly ray, butterfly valve, button fern, buzzards bay, byzantine church, c major, cabinet wood,
cactus family, calathian violet, calendar day, calico bush, california fern, california olive, california poppy, call
box, call mark, call number, calla lily, caloosahatchee river, calvary cross, calycanthus family, cam river, camphor
daisy, canada ginger, canada jay, canada lily, canada violet, canadian river, canandaigua lake, canary bird, candlemas
day, cane reed, canella family, canis major, canna lily, canned hunt, canterbury bell, canton ginger, canton river,
cape jasmine, cape may, cape york, caper family, capital letter, capitol hill, caprimulgiform bird, car park, car
pool, caramel brown, carbon black, cardiac valve, cardinal number, carib wood, carinate bird, carnation family,
carpenters kit, carpetweed family, carriage house, carrot family, carte blanche, cash price, cat box, cathode ray,
catholic church, cattail family, caviuna wood, cayenne jasmine, cayuga lake, celandine poppy, celtic cross, center
field, central park, cereal box, chain fern, chain letter, chapel hill, charcoal gray, charcoal grey, chari river,
charnel house, chattahoochee river, chatter mark, check mark, checkered lily, chenin blanc, chenopodium album,
cherokee rose, cherry stone, chesapeake bay, chile hazel, chilean jasmine, chilean rimu, china clay, china rose, china
stone, chinese holly, chinese white, chiococca alba, chocolate candy, chordate family, christmas box, christmas bush,
christmas carol, christmas day, christmas fern, christmas green, christmas holly, christmas rose, chrome green, church
bell, cigar box, cimarron river, cinnamon fern, cinnamon stone, citizenship day, city hall, ciudad victoria, civil
day, clack valve, clapper valve, clearing house, climbing fern, climbing lily, clinch river, clintons lily, clip art,
closing price, clothes peg, clover fern, club moss, clubmoss family, clusia major, clytocybe alba, coach house, coal
black, coal house, coast lily, coelenterate family, coffee fern, coffee rose, coil spring, coin box, collectors item,
colorado river, columbia river, columbiform bird, columbus day, combretum family, commencement day, commercial art,
common box, common daisy, common ginger, common heath, common ivy, common jasmine, common reed, commonwealth day,
complex number, composite number, compound number, concept album, concert hall, confederate jasmine, confederate rose,
conference house, congo river, congregational church, conjugal family, connecticut river, connemara heath, contact
print, coosa river, copernicia alba, coping stone, coptic church, coraciiform bird, coral bush, corkwood family, corn
chip, corn field, corn lily, corn poppy, cornish heath, corvine bird, cosmic ray, cosmological constant, cotton candy,
cotton rose, country house, cover letter, covering letter, cow chip, cow lily, cownose ray, cowpen daisy, coyote bush,
cranberry bush, cranberry heath, cranes bill, crank letter, crape fern, crape jasmine, crazy house, cream violet,
creeping fern, creeping lily, creosote bush, crepe fern, crepe jasmine, crevalle jack, crocethia alba, crocodile bird,
crocodile river, cross street, crowberry family, crowfoot family, crown daisy, crystal violet, crystallized ginger,
ctenophore family, cuculiform bird, culinary art, cumberland river, cunonia family, currant bush, cut price, cycad
family, cypress family, cypripedium album, cyrilla family, dagger fern, dalmatian iris, damask rose, damask violet,
dames violet, dance hall, dandelion green, danube river, darling river, davys gray, davys grey, day lily, dead letter,
death bell, death house, debris storm, deciduous holly, decoration day, deed poll, deep brown, deer fern, deer hunt,
degree day, delaware bay, delaware river, delta ray, deposit box, desert holly, desert olive, desert rose, detached
house, detention house, detroit river, deutsche mark, devil lily, devil ray, dewberry bush, diacritical mark, dialog
box, diapensia family, dice box, dicot family, dictamnus alba, dihybrid cross, dinner bell, dirty pool, discount
house, discovery day, dispatch box, dissociation constant, ditch fern, ditch reed, ditto mark, diving bell, dna chip,
dnieper river, doctors bill, dog house, dog rose, dog violet, dogbane family, dogtooth violet, dogwood family, dollar
bill, dollar mark, dolls house, dominant gene, dominion day, double cross, double reed, double sharp, downing street,
downy ash, dramatic art, duckweed family, due west, duplex house, dust storm, dusty miller, dutch iris, dwarf daisy,
dwarf iris, dwelling house, eagle ray, east river, easter daisy, easter day, easter lily, eastern church, easy street,
eating house, eating place, ebony family, ebro river, echinoderm family, eelgrass family, egg white, eggplant bush,
elaeocarpus family, elbe river, elderberry bush, election day, electric bell, electric bill, electric field, electric
ray, electric storm, electrical storm, electrostatic field, elephant bird, elkhorn fern, elm family, ember day, emery
stone, empire day, encyclical letter, english daisy, english iris, english ivy, english violet, entrance hall, epacris
family, epilepsia major, episcopal church, equilibrium constant, equinoctial storm, escape valve, established church,
euphrates river, european ash, european box, even chance, exclamation mark, exhaust valve, exhibition hall, exit poll,
extended family, eye candy, f number, factory price, fair chance, fairy bell, false heather, fan fern, fan letter,
farm bill, fast buck, fast day, fast lane, fat chance, fathers day, fawn lily, feast day, feijoa bush, felt fern, fete
day, fetter bush, fibonacci number, fictitious place, fiddlehead fern, field day, field house, field pansy, field
poppy, figwort family, file folder, film fern, filmy fern, fine art, fine print, finnish mark, fire bell, fire bush,
fire opal, fish family, flacourtia family, flag day, flame bush, flaming poppy, flanders poppy, flannel bush, flax
family, fleet street, flightless bird, flint river, floating fern, florentine iris, flower garden, flowering ash,
flowering fern, flowering hazel, flowering stone, fly ash, flying bird, flying field, flying fox, flying robin, folk
art, football field, force field, foreign bill, forlorn hope, form family, form letter, formal garden, fort smith,
forth river, fortunella margarita, foster family, foundation stone, fox river, foxglove family, fragile fern, frat
house, fraternity house, free grace, free house, free rein, free will, frigate bird, fringe bush, frogbit family, full
house, full moon, full page, fumitory family, funeral church, fungus family, funny house, gallant fox, gallinaceous
bird, galveston bay, galway bay, gambling house, game bird, gaming house, gamma ray, ganges river, garden violet,
garonne river, gas constant, gathering place, gear box, gentian family, gentian violet, genus iris, genus maia, genus
paris, genus rosa, genus viola, geogia holly, geranium family, german iris, german ivy, german mark, german shepherd,
gesneria family, giant fern, giant reed, gila river, ginkgo family, glacier lily, gladdon iris, glade fern, glebe
house, globe lily, glory fern, glory lily, glottis vera, glyptic art, gods will, goggle box, gold fern, golden fern,
golden heather, golden marguerite, goldies fern, good day, good faith, good will, goodenia family, gooney bird,
gooseberry bush, gooseberry family, goosefoot family, gorgonian coral, gourd family, grain field, granadilla wood,
grand river, granny smith, grape fern, grapevine family, graphic art, grass family, grass fern, gravitational
constant, gravitational field, gray fox, gray jay, gray wolf, grayish brown, great gross, great hall, greater london,
greek church, greek cross, green ash, green bay, green olive, green river, grey fox, grey jay, grey wolf, greyish
brown, ground ivy, ground rose, groundhog day, groundsel bush, grub street, guaiac wood, guaiacum wood, guantanamo
bay, guava bush, guelder rose, gymnosperm family, haemulon album, halesia carolina, half page, half title, hand fern,
hangzhou bay, happy chance, hard candy, hard fern, harlem river, harlequin opal, harley street, hartford fern, harvest
moon, hash house, hash mark, heart valve, heat ray, heath family, heath violet, hedge violet, hemp family, herons
bill, hiding place, high church, high street, hiring hall, holandric gene, holly family, holly fern, holy day, holy
place, home page, homeobox gene, homeotic gene, honey bell, honeysuckle family, hoof mark, hookers green, hoop ash,
hop field, hop garden, horn poppy, horned poppy, horned violet, horsetail family, hot spring, hotel bill, housatonic
river, hubble constant, hubbles constant, hudson bay, hudson river, hydrangea family, ice crystal, ice field, ice
storm, iceland moss, iceland poppy, identification number, identikit picture, idiot box, ijssel river, ileocecal
valve, ill will, illinois river, imaginary number, imaginary place, impala lily, inauguration day, incense wood,
independence day, independence hall, index number, indian summer, indigirka river, indigo bird, indoor garden,
indurated clay, indus river, industrial park, infrared ray, inland bill, innocents day, intake valve, international
waters, interrupted fern, inventory item, investment letter, ipomoea alba, irish moss, irrational number, irrawaddy
river, irtish river, irtysh river, isere river, ivory black, jacobean lily, japanese iris, japanese ivy, japanese
rose, jersey fern, jerusalem cross, jet black, jew bush, jook house, joss house, journal box, judgement day, judgment
day, jujube bush, juke house, jumping gene, jumping jack, juneberry holly, juniper bush, jury box, kan river, kanawha
river, kansas river, kasai river, kaw river, kendal green, keuka lake, key west, kidney fern, kidney stone, killarney
fern, killing field, king fern, kingfisher daisy, kissimmee river, kitchen garden, klamath river, korea bay, kudu
lily, kura river, la paz, labor day, labor pool, lace fern, lady day, lady fern, lake victoria, lamium album, lammas
day, lamp house, land grant, landing field, landing place, lardizabala family, large number, large white, largeleaf
holly, last day, latin cross, lawyer bush, lazar house, leading rein, leadwort family, leaf spring, leap day, leather
fern, leatherleaf fern, left field, legume family, lehigh river, lemon lily, lent lily, lenten rose, leopard lily,
leper lily, lethal gene, letter box, liberty bell, license number, licorice fern, light brown, liliopsid family,
limestone fern, limicoline bird, linden family, lip fern, liquid crystal, list price, living stone, living will,
livingstone daisy, loasa family, lobelia family, local street, lodging house, loire river, lombard street, long moss,
loosestrife family, lords day, lorraine cross, love letter, lubbers mark, lunar day, lurking place, lutheran church,
lychnis alba, mach number, mackenzie river, mackerel sky, madagascar jasmine, madder family, madeira river, madonna
lily, madriporian coral, magic number, magnetic field, magnetic storm, magnolia family, magnoliopsid family, mahogany
family, maidenhair fern, main street, male fern, mallow family, maltese cross, mammal family, maned wolf, mangrove
family, manila bay, manna ash, manor hall, manor house, mansion house, manta ray, maple family, mariposa lily, market
cross, market day, market garden, market letter, market place, market price, marmalade box, marmalade bush, marne
river, marriage mart, marsh fern, martial art, mass number, massachusetts bay, massachusetts fern, matilija poppy,
meadow fern, meadow lily, meat house, medical bill, medullary ray, meeting house, meeting place, mekong river,
melilotus alba, memorial day, memorial park, memory chip, memory picture, mennonite church, mental picture, merchant
marine, merrimack river, mess hall, mess kit, metal wood, metaurus river, methodist church, meuse river, mexican
green, mexican poppy, michaelmas daisy, michaelmas day, michigan lily, micro chip, microprocessor chip, microscopic
field, middle west, midsummer day, midsummers day, mignonette family, milk river, milkweed family, milkwort family,
mimosa bush, minamata bay, mine field, minimal art, mint candy, mint family, mississippi river, missouri river,
mistletoe family, mite box, miter box, mitral valve, mitre box, mobile bay, mobile river, mobuto lake, modifier gene,
mohawk river, mollusk family, money box, monocot family, monohybrid cross, monongahela river, mont blanc, montego bay,
monterey bay, moon daisy, moon ray, moonseed family, moreau river, moreton bay, mormon church, morus alba, mosquito
fern, moss family, moth miller, mothers day, motion picture, motor pool, mound bird, mountain ash, mountain box,
mountain daisy, mountain fern, mountain heath, mountain lily, mountain rimu, mountain rose, movie house, moving
picture, mulberry family, multiflora rose, murrumbidgee river, mus rose, mushroom coral, music box, music hall,
musical box, musical harmony, musk rose, mustard family, mutant gene, mute swan, myna bird, mynah bird, myrsine
family, mythical place, nabalus alba, naiad family, naive art, name day, namoi river, narragansett bay, nasturtium
family, natal day, national park, native holly, natural number, natural spring, navy cross, nebraska fern, neckar
river, needle bush, needle wood, neosho river, nesting place, nestorian church, nettle family, neva river, new forest,
new london, new moon, new penny, new river, new york, news item, niagara river, niger river, night bell, night bird,
night jasmine, night letter, nile river, nimble will, niobrara river, nob hill, nonpasserine bird, north carolina,
northern cross, nose candy, nuclear family, nuclear winter, nucleon number, numbers pool, nut house, nutmeg family,
nymphaea alba, oak fern, oast house, ob river, oceanic bird, ochna family, octane number, oder river, offer price,
ohio river, old rose, oleander fern, oleaster family, op art, open house, open letter, opera house, operative field,
operator gene, opinion poll, opium poppy, opossum wood, opposite number, orange daisy, orange river, orchid family,
ordinal number, oregon ash, oregon lily, oriental poppy, orinoco river, orthodox church, osage river, osaka bay,
oscine bird, ostrich fern, ottawa river, ouachita river, ouse river, outlet box, outsider art, oxbow lake, oxeye
daisy, oxford gray, oxford grey, oxidation number, oyster park, packing box, paddle box, page number, painted daisy,
pale violet, palm family, pancake day, pandoras box, panther lily, papal cross, papaya family, paper chase, paper
white, para river, parana river, paris daisy, paris green, parrots bill, passeriform bird, passionflower family,
patriarchal cross, patriots day, paving stone, paynes gray, paynes grey, pea family, pea green, peace lily, peach
bell, peat moss, pecos river, pectoralis major, pelagic bird, penalty box, pencil box, penobscot bay, penobscot river,
peony family, pepper box, pepper bush, pepper family, peppermint candy, perching bird, pernambuco wood, persian iris,
persian violet, personal letter, peruvian lily, philosophers stone, phlox family, phone bill, phone jack, phone
number, phonograph album, photograph album, photographic print, piciform bird, pickerelweed family, piezoelectric
crystal, pillar box, pin number, pine family, pine fern, pine lily, pineapple family, ping river, pink family, pinot
blanc, pipewort family, pistacia vera, pitch black, pityriasis alba, plancks constant, planetary house, plant family,
plantago major, plantain family, plantain lily, plastic art, plata river, platinum black, platte river, playing field,
pleurocarpous moss, plimsoll mark, plume poppy, plumeria alba, po box, po river, podocarpus family, poetic justice,
poison ash, poison bush, poison ivy, poker chip, pokeweed family, policeman bird, polling day, polling place, polygala
alba, polyphonic letter, pomme blanche, pond lily, pondweed family, poor box, pop art, poppet valve, populus alba,
porcelain clay, portuguese heath, post house, potato chip, potato family, potato fern, potomac river, potters clay,
potters field, powdered ginger, prairie fox, prairie wolf, precious coral, precious stone, prenanthes alba,
presbyterian church, presidents day, press box, prickly ash, prickly poppy, prime number, primitive art, prison house,
probate will, prompt box, prompters box, protea family, protestant church, protoctist family, prudhoe bay, public
charity, public house, publishing house, pudding stone, pulmonary valve, pumice stone, pump house, pumpkin ash,
punctuation mark, purchase price, purple heather, purslane family, purus river, putting green, pyloric valve, pyrenees
daisy, quail bush, quarter day, quartz crystal, quassia family, quercus alba, question mark, quetzal bird, quick buck,
quillwort family, quince bush, quotation mark, rabbit bush, raccoon fox, radiation field, rag day, ragged robin, rain
forest, rainy day, ranch house, rappahannock river, raptorial bird, rasp fern, raspberry bush, rational number, ratite
bird, rattlesnake fern, raw sienna, raw wood, real number, recessive gene, reciprocal cross, record album, rectifying
valve, red ash, red bay, red clay, red coral, red cross, red fox, red ginger, red poll, red river, red wolf, reddish
brown, redwood family, registration number, regulator gene, regulatory gene, reindeer moss, relief valve, remembrance
day, repressor gene, reptile family, republican river, residence hall, residual clay, rest day, rest house,
resurrection fern, rhine river, rhinoceros family, rhone river, ribbon fern, rifleman bird, right field, ringworm
bush, riparian forest, ripe olive, ripple mark, rock candy, rock crystal, rock garden, rock rose, rockrose family,
roentgen ray, rogation day, roof garden, rooming house, rosetta stone, round robin, row house, royal family, royal
fern, royal house, rue family, ruhr river, runaway robin, runic letter, running title, rush family, rush rose, russian
olive, russian river, rydberg constant, saale river, sabicu wood, sacramento river, safari park, safe house, safety
valve, sage green, sago fern, saints day, salad green, salix alba, salmon river, salt marsh, saltwort family,
salvadora family, sambre river, sand lance, sand reed, sandalwood family, santa cruz, santalum album, santo domingo,
saone river, sapodilla family, saratoga chip, satin bird, sauvignon blanc, savannah river, saving grace, saxifrage
family, scalar field, scale fern, scale moss, scaly fern, scarlet bush, scarlet letter, scented fern, scheldt river,
school bell, school day, scots heather, screw jack, scrub bird, sea ash, sea bird, sea green, sea holly, sea lane, sea
lily, sea moss, sea poppy, sea robin, sea wolf, seaside daisy, secretary bird, sedge bird, sedge family, sedimentary
clay, seed fern, seed pearl, sego lily, seine river, selling price, semidetached house, semilunar valve, seneca lake,
sensitive fern, sentry box, sergeant major, serpent fern, sesame family, settlement house, severn river, sewing kit,
seyhan river, shadow box, shari river, shasta daisy, sheep bell, shell ginger, shenandoah river, sherwood forest,
shield fern, ships bell, shoe black, shooting box, shop bell, shore bird, short letter, shoulder mark, show bill,
showy daisy, shuttlecock fern, side street, sidereal day, sight bill, signal box, silent butler, silent picture,
silicon chip, silk wood, silver ash, silver bell, silver fern, silver fox, silver gray, silver grey, silver storm,
sinapis alba, sisal family, sleigh bell, slide valve, slim chance, slow lane, sluice valve, small letter, small print,
small white, smoke bush, snake fern, snake river, snake wood, snipe hunt, snow lily, snuffbox fern, so long, soapberry
family, sod house, soda ash, solar constant, solar day, solar house, somme river, soot black, south carolina, southern
cross, spanish heath, spanish iris, spanish moss, speech day, sphagnum moss, spice bush, spider fern, spiderwort
family, spike heath, spike moss, spinel ruby, spiral spring, sporting chance, sporting house, sports page, spot price,
spotted ray, spring heath, spurge family, squawk box, squeeze box, stagger bush, staghorn coral, staghorn fern,
staghorn moss, stamp album, standing stone, star jasmine, stash house, station house, statute title, stave wood, steel
gray, steel grey, stem ginger, stemless daisy, stepping stone, sterculia family, stereoscopic picture, still hunt,
stink bell, stinking iris, stonecrop family, stony coral, stop number, storax family, strand wolf, strap fern, straw
poll, strawberry bush, strawberry mark, strelitzia family, stress mark, stretch mark, striped violet, structural gene,
study hall, stuffing box, styrax family, subject field, substantia alba, sugar candy, sumac family, summer house, sun
river, sun rose, sundew family, sunken garden, suppresser gene, suppressor gene, surinam river, suriname river,
susquehanna river, swamp ash, swamp bay, swamp lily, sweet bay, sweet fern, sweet violet, sweetleaf family, swimming
pool, sword fern, sword lily, symphoricarpos alba, tabula rasa, tagus river, tahoka daisy, tai long, talking picture,
tallapoosa river, tamarisk family, tammany hall, tampa bay, tap house, tasmanian wolf, tattletale gray, tattletale
grey, tau cross, tax bill, tea family, tea garden, tea rose, telephone bell, telephone bill, telephone box, telephone
jack, telephone number, tenement house, tennessee river, tent peg, teres major, terra alba, terraced house,
territorial waters, thalassaemia major, thalassemia major, thames river, thanksgiving day, theme park, thermal spring,
thermionic valve, third house, throttle valve, thunder bay, tidal river, tidewater river, tiger lily, tigris river,
timber wolf, time bill, time constant, title page, toad lily, tocantins river, toe box, toilet kit, tombigbee river,
tongue fern, tool kit, torchwood family, tortilla chip, town hall, town house, toy box, tract house, trade bill,
traffic lane, trailer park, transcendental number, transfiguration day, transforming gene, transvaal daisy, travel
kit, travelers joy, travellers joy, treasure house, treasure hunt, treasury bill, tree fern, tree heath, tree house,
tree poppy, trent river, tribute album, tricuspid valve, trillium family, trinity river, tropic bird, trout lily,
truck garden, true bill, true heath, true jasmine, trumpeter swan, tuck box, tufted pansy, tundra swan, tupelo family,
turfing daisy, twelfth day, twin bill, twist wood, tyne river, type family, typing pool, tyrant bird, tyto alba,
umbrella bird, umbrella fern, uniat church, uniate church, unification church, union jack, unitarian church, upset
price, ursa major, uruguay river, us house, valentine day, valentines day, valerian family, vandyke brown, variola
major, varsity letter, vascular ray, vegetable garden, verbena family, vernacular art, vernal iris, vervain family,
veterans day, vetluga river, vibrating reed, victory day, victory garden, village green, vinca major, violent storm,
violin family, virgin forest, vis major, viscum album, vistula river, visual field, voice box, voix celeste, volga
river, volkhov river, volute spring, wabash river, wading bird, wading pool, walking fern, wall fern, wall street,
walnut family, warning bell, washing day, watch crystal, water bird, water fern, water lily, water violet, watering
place, waterleaf family, wave number, web page, wedding day, wedding picture, welsh black, welsh poppy, weser river,
west virginia, western church, western poppy, wheat field, whisk fern, whisker jack, whistling swan, white ash, white
daisy, white fox, white heather, white house, white knight, white lily, white river, white violet, white wolf, whole
kit, whole number, wholesale house, whooper swan, widow bird, wild ginger, wild olive, wild pansy, wild west,
willamette river, wind bell, wind park, wind poppy, wind rose, window box, windsor green, winter fern, winter hazel,
winter heath, winter jasmine, winter rose, wintergreen family, wisconsin river, witch hazel, witness box, wood fern,
wood lily, wood poppy, wood violet, woodwind family, woolly daisy, word picture, work day, working day, worm family,
wych hazel, x ray, xiphium iris, yalu river, yam family, yangtze river, yaupon holly, yazoo river, yellow green,
yellow iris, yellow jack, yellow jasmine, yellow river, yellowish brown, yellowish green, yellowstone river, yenisei
river, yenisey river, yew family, young bird, yukon river, zaire river, zambezi river, zamia family, zebrawood family,
zinc white, zoological garden
"""
"""Things of two words that end with one."""

WORDS = """
abandon abashed abbey abbot abdomen abed abet abhor abide abiding ability abject ablated ablaze able ably aboard abode
abolish abound about above abridge abroad abrupt abscess absence absent absorb abstain absurd abuse abused abyss
academy accede accent accept access acclaim accord accost account accrue accrued accuse ace acetone ache achieve
aching acid acidity acolyte acquire acquit acre acreage acres across act acting action active actor actress actual
actuate acute acutely adamant adapt adapted add address adenoma adept adhere adieu adios adjoin adjourn adjunct adjust
admire admirer admit admix ado adonis adopt adopted adore adorn adrenal adroit adsorb adult advance advent adverb
adverse advice advise advisor aegis aeon aerated aerator aerial aerobic aerosol afar affably affair affairs affect
affirm affix affixed afford affront afghan aflame aflare afoot afraid aft after again agape agate age aged agency
agenda agent agile agilely agitate ago agony agree ague ahead aid aide ailing ailment aim aimless air airflow airily
airless airport airs airway airy aisle alarm alarmed album albumin alchemy alcohol alert alertly algae alibi alien
alight align alike aliquot alive alkali all allege alleged alley allied allot allow ally almost aloes alone along
aloof aloud alpha already also alter altered alundum always amass amateur amaze amazed amazing amber amble ambush
amend amended amiable amiss amity ammo amorist amorous amount amp ample amplify amply amulet amuse amused amusing
analogy analyse analyst analyze anarchy anatomy anchor ancient andrena anemia anemic anew angel angelic anger angle
angrily angry angst anguish angular animal animate animize anion anionic ankle annoy annoyed annual anode anomic
anomie answer ant antenna anthill anti antic antigen antique anvil anxiety anxious any anyhow anymore anyway aorta
apache apart ape apex apiece aplomb apogee apology appeal appear appease append applaud apple applied apply appoint
approve apron apt aqueous arable arc arch arched arching arctic ardent ardor arduous area areaway arena argon argot
argue arguing aridity arise arm armed armful armoire armor armored armpit arms army aroma around arousal arouse
aroused arraign arrange array arrest arrival arrive arrow arroyo arsenic art artery article artisan artist arts arty
ascend ascribe ash ashen ashore aside ask asleep aspect asphalt aspire aspirin ass assail assault assay assent assert
assess asset assign assist assume assumed assure assured astound astral astray astride astute atheist athlete atm atom
atomic atone atop atrophy attach attack attain attempt attend attest attic attire attired attract attune audible audit
augment augur august aunt aurally austere author auto autopsy autumn avail avarice avenge avenue average avert aviary
avocado avoid await awake awaken award aware away awe awed awful awfully awhile awkward awry axe axial axially axiom
axis axle azimuth babble babe babel baby back backer backing backlog bacon bad badge badger badly badness baffle
baffled bag baggage baggy bagpipe bait bake baked balance bald balding bale baleful balk balking ball ballad ballast
ballet balloon ballot balsam bamboo ban banal banana band bandage bandit bandy bang banging banish banjo bank banker
banner banquet banshee banter baptize bar barbed barbell bare barely bargain barge barium bark barkeep barley barn
barnful barony baroque barrack barrage barrel barren barrier base based bash bashful basic basin basis bask basket
bass bastard baste bastion bat batch bated bath bathe bather bathing bathos bathtub baton batter battery batting
battle batwing bawdy bawl bay bayonet bazaar beach beacon bead beaded beadle beady beak beam beaming bean bear beard
bearded bearer bearing beast beat beaten beating beatnik beau beauty beckon become bed bedamn bedding bedfast bedpost
bedroom bedside bedtime bee beech beef beefy beehive beer beetle befall befit befog before beg beget beggar beggary
begin beguile behalf behave behead behind behold behoove being belabor belated belch belfry belie belief believe bell
bellhop bellow belly belong beloved below belt bemoan bench bend bended bending beneath benefit bent bequest berate
berg berlin berry berth beseech beset besides besiege bespeak best bestial bestow bet beta bethink betray better
between bevel bevy bewail beware bewitch beyond bias bible biceps bicker bicycle bid bidder bidding bide big bigger
bile bilk bill billion billow bin bind binder binding biology biopsy bird birdie birth biscuit bishop bit bite biter
biting bitter bitters bivouac bizarre blab black blacken blade bladed blame blanch bland blandly blank blanket blare
blaring blast blatant blaze blazing bleach bleak bleakly bleary bleat bleb bleed blemish blend bless blessed blight
blind blinded blindly blink blinker blister blithe bloat blob bloc block bloke blond blonde blood bloody bloom blossom
blot blotch blow blower blowing blown blubber blue blues bluff bluish blunder blunt blur blurred blurt blush bluster
board boast boat boater boating bode bodice bodily body bog bogey boggle bogy boil boiler boiling bold boldly bolo
bolster bolt bomb bombast bomber bombing bond bone bonfire bonnet bonus bony boo booby book booked booker booking boom
boon boost boot booted booth booty booze borate border bore bored boredom boring born borough borrow bosom boss bother
bottle bottom boucle bough boulder bounce bound bounded bounds bouquet bourbon bout bovine bow bowed bower bowl
bowlder box boxcar boxed boxer boy boycott boyhood boyish brace braced bracing brad brag braid braided brain brainy
brake brakes bramble branch brand branded brandy brash brass brassy bravado brave bravely bravery brazen brazil breach
bread breadth break breakup breast breath breathe breed breeze brevity bribe briber brick bride bridge bridle brief
briefly brier brig brigade bright brim brindle bring brink brisk briskly bristle brittle broad broaden broadly broil
broiler broke broken broker bronc bronze bronzed brood brook broom brothel brother brow brown bruise bruit brush
brushed brushy brutal brute bubble buck bucket buckle bucolic bud buddy budge budget buff buffalo buffer buffet
buffoon bug buggy bugle bugler build builder buildup built bulb bulge bulging bulk bulky bull bullet bully bum bump
bunch bundle bunk bunker bunt bunter buoyant burden bureau burgeon burglar burial buried burly burn burned burner
burning burnish burnt burr burrow burst bury bus busboy bush bushel bushy busily bust busted bustle busy but butcher
butler butt butter button buy buyer buying buzz buzzing bygone bypass cab cabana cabbage cabin cabinet cable cache
cackle cackly cadaver cadence cadenza cadre cafe cage cagey cake calcify calcium calf caliber calibre caliph call
caller callous calm calming calmly calumny calving camera camp camper camping campus can cancel cancer candid candle
candour candy cane caning cannon canon cant canteen canter cantle canvas canvass canyon cap capable cape caper capital
capstan capsule captain captive captor capture car carabao caravan carbine carbon carcass card cards care careen
career careful caress cargo carload carnal carpet carping carrier carry cart carton cartoon carve carved carven
carving cascade case cash casino cast castle casual cat catalog catcall catch catcher cater caterer cathode catkin
cattle caucus causal cause caution cavalry cave caveat caveman cavern cavity cavort caw cease ceiling cell cellar
cement censure census cent center central century ceramic certain certify chafe chaff chagrin chain chair chaise
chamber champ chance chancel change changed channel chant chanted chaos chaotic chap chapel chapter charge charged
charger chariot charity charm charnel chart charter chase chat chatter cheap cheat check checkup cheek cheer cheery
cheese chela chemist cherish chest chew chic chick chicken chide chief chiefly chignon child chill chilly chimney chin
china chinked chip chipper chirp chisel chivy chock choice choir choke choked choking chomp choose choosy chop chopper
chord chore chorine chortle chorus chosen christ chrome chronic chuckle chuff chug chump chunk chunky church churn
chute cicada cigar ciliate cilium cinch cinema cipher circle circuit circus cite citizen citrate citron citrus city
civic civil clad claim clam clamber clammy clamor clamp clan clang clangor clank clap claret clarify clarity clash
clasp class classic clatter clause claw clay clean cleaner cleanly cleanse clear cleared clearly cleat cleave cleft
clench clergy cleric clerk clever cliche click client cliff climate climax climb clinch cling clink clip clique cloak
clobber clock clod clog clogged clomp clonic close closed closely closer closet closeup closing closure clot cloth
clothe clothed clothes clotted cloud clouded cloudy clover clown club cluck clue clump clumsy cluster clutch coach
coal coarse coast coastal coat coated coating coax coaxial coaxing cobbler cocaine cock cockpit cocky coconut cocoon
coddle code codify coerce coexist coffee coffin cognate cohere coil coin cold coldly collage collar collate collect
college colon colonel colony color colored colors colour colt column coma comb combat combine combo come comedy comer
comet comfort comic coming command commend comment commie commit common commune commute compact company compare
compass compel compete compile complex comply compose compost compute comrade concave conceal concede conceit concept
concern concert concise concoct concord concur condemn condone conduct cone confer confess confide confine confirm
conform confuse congeal congo conjoin connect connote conquer consent consign consist console consort consult consume
contact contain contend content contest context contour control convene convent convert convex convey convict convoy
cook cookie cooking cool coolant cooler cooling coolly coon coop cop cope coping copper copy coral cord cordial core
cork corn corner corona coroner corps corpse corral correct corrode corrupt corsage cortex cosily cosmic cosmos cost
costly costume cottage cotton couch cough council counsel count counter country county coup couple coupon courage
courier course court cousin cove cover covered covet cow coward cowboy cower cowhand cowhide cowled cowling cows
coyness coyote cozy cps crab crack cracked cracker crackle cradle craft crafter crafty crag craggy cram cramp crane
cranky crash crate crave craved craven crawl craze crazed crazily crazy creak cream creamy crease create creator
creche credit credo creed creedal creek creep creeper cremate crest crested crevice crew crib cricket crime crimson
cringe cripple crisis crisp critic croak crochet crocked crofter crone crony crook crooked croon crop cropped cross
crossed crouch crow crowd crowded crown crowned crucial crucify crude crudely crudity cruel cruelly cruelty cruise
crumble crummy crumple crunch crupper crusade crush crushed crusher crust crusted crutch cry crying cryptic crystal
cube cubism cubist cud cuddle cuff culprit cult cultist culture cumulus cunning cup cur curb cure curio curious curl
curled curling curly currant current curse cursed cursory curtail curtain curtly curve curved curving cushion cusp
cuss custody custom cut cute cutlass cutting cycle cyclist cynic cynical cyst dab dabble dabbled dad dadaism daddy
dagger daily dainty dairy dais daisy dam damage dame damn damned damp dampen dance dancer dancing dandily danger
dangle danish dank dapper dappled dare daring dark darken darkly darling darn darned dart dash dashing data date dated
datum daunt dawn dawning day daybed days daytime dazed dazzle deacon dead deaden deadly deaf deal dealer dealing dean
dear dearly death deathly debacle debate debauch debris debt debut dec decade decay decayed deceit deceive decency
decent decide deck declaim declare decline decor decorum decree decry deduce deduct deed deem deep deepen deeply deer
default defeat defect defend defense defer defiant deficit define defined defraud defray defrost defy degas degrade
degree deign deity delay delayed delight delimit deliver delta deltoid delude deluge delve demand demean demon demote
demur demure denial denote dense density dent dental dentist denture denuded deny depart depend depict deplore deploy
depose deposit depot deprave depress deprive depth deputy deride derive derived derrick dervish descend descent desert
deserve design desire desired desk despair despise despoil dessert destine destiny destroy detach detail details
detain detect deter detest detract develop deviant deviate device devil devious devise devisee devote devoted devotee
devour devout dew diagram dial dialect dialyze diam diamond diaper diary diatom dice dickens dictate dictum die diet
dietary differ diffuse dig digest digging dignify dignity digress dilate dilemma dilute dim dime dimer dimly din dine
dingy dinner dip dipole dipper direct dirge dirt dirty disable disarm disband disc discard discern discuss disdain
disease disgust dish disk dislike dismal dismay dismiss disobey disown dispel display dispose dispute disrobe disrupt
dissect dissent distal distant distill distort disturb ditch ditty divan dive diverge diverse divert divest divide
divided divine diving divorce divulge dizzily dizzy docile dock docket doctor dodge dodging dog dogged dogging doglike
dogma dogwood doleful doll dollar domain don donate done donor doom doomed door doorman doorway dope doped dormant
dosage dose dosed dotted double doubly doubt dough dourly dove down dowry doze dozen dozens drab draft drafty drag
dragon drain drama drape draped draper drapery drastic draught draw drawer drawing drawl drawn dread dream dreamer
dreamy dreary dregs dress dressed dresser dressy dribble dried drift drill drilled drink drinker drip drive driven
driver driving drizzle drone droop drop droplet dropout dross drought drover drown drowse drowsy drug drugged drum
drumlin drummer drunk drunken dry dryly dryness dual dub dubious duck ducking duct due duel duelist duffer dugout duke
dull dullard dulled dully duly dumb dump dun dune dung dungeon dunk dupe durable dusk dusky dust dustbin dusty duty
dwarf dwell dweller dwindle dye dyeing dying dynamic dynasty each eager eagerly eagle ear eared earl earlier early
earn earned earnest earth earthy ease easel easily east easter eastern easy eat eatable eating ebb ebbing ebony echo
eclipse economy ecstasy eddy edema edge edged edgy edifice edify edit edition editor educate efface effect effort egg
egghead eggs ego egotism egotist eight eighth eighty either eject elapse elapsed elastic elate elation elbow elder
elderly eldest elect elected elector elegant element elevate eleven elfin elicit elite ell elm eluate elude elusive
elute elution emanate embargo embark embassy embed emblem embody emboss embrace embroil emerge eminent emit emotion
empire employ empower empty emulate enable enact enamel encamp encase enchant enclave enclose encrust end endear
ending endless endorse endow endowed endure enemy energy enforce engage engaged engine engrave engross engulf enhance
enigma enjoin enjoy enlarge enlist enliven enmesh enough enquire enrage enraged enrich enrol enroll ensue ensuing
ensure entail enter entice entire entitle entity entomb entrant entropy entrust entry envelop envious environ envy
enzyme epaulet epic epicure epigram episode epitaph epithet epitome epoch epoxy equal equally equate equator equip
equity era erase erect erode eroded erosion erotic err errand erratic error ersatz erudite erupt escape escaped
escheat eschew escort espouse essay essence estate esteem ester estuary etch eternal ethanol ethic ethical ethics
ethnic ethos eugenic evade evasive even evening event ever evident evil evoke evolve exact exactly exalt exalted
examine example exceed excel except excess excise excite excited exclaim exclude excuse execute exempt exert exhale
exhaust exhibit exile exist exit exodus exotic expand expanse expect expel expend expense expert expiate expire
explain explode exploit explore export expose exposed expound express expunge extant extend extent extern extra
extract extreme extrude exude eye eyeball eyebrow eyed eyelid eyelike eyes fabled fabric facade face faced facet
facing fact faction factor factory factual faculty fade faded fadeout faery fail failure faint faintly fair fairly
fairway fairy faith fake faker falcon fall fallen falling falloff fallout fallow false falsify falsity falter fame
famed family famous fan fanatic fancy fanfare fantasy fantods far faraway farce fare farm farmer farming farther
fascism fascist fashion fast fasten faster fat fatal fatally fate fateful father fathom fatigue fatten fatty faucet
fault favor favored fawn faze fear fearful feast feat feather feature fecund federal fedora fee feeble feed feeder
feeding feedlot feel feeler feeling feign feint feline fell fella fellow felon felt female fence fencing fender
ferment ferry fertile fervent fervor festive fetch fete fetid feudal fever few fewer fiat fiber fibrin fiction fictive
fiddle fidget field fielder fiend fierce fiery fifteen fifth fifties fifty fig fight fighter figure file filing fill
filled filling fillip filly film filmed filming filter filthy final finale finally finance find finding fine finely
finger finicky finish finite fire firearm fireman firing firm firmly first fiscal fish fisher fishing fist fit fitness
fitting five fix fixed fixer fixing fixture fizzle flag flail flair flake flame flaming flank flannel flap flapper
flare flaring flash flashy flask flat flatly flats flatten flatter flatus flaunt flavor flaw flea fleck flecked flee
fleet flesh fleshy flex flick flicker flight flimsy flinch fling flint flip flirt flit float floc flock flog flood
flooded floor flop floral florid florist flounce flour flout flow flower flowing flu flub fluent fluff fluffy fluid
flurry flush flushed fluster flute flutter flux fly flyer flying flyway foam foamy focal focally focus foe fog foible
foil fold foliage folk folks folksy follow folly fond fondly food fool fooling foolish foot footage footing foppish
forbid force forced forearm forego foreign foreman foresee forest forever forfeit forge forget forgive forgo fork
forked forlorn form formal formed former formula forsake fort forte forth forties fortify fortune forty forward foster
foul fouled found founder foundry four fourth fowl fox foyer fracas fragile frail frame framed framing franc frank
frankly frantic fraud frayed freak freckle free freedom freely freeman freeway freeze freight frenzy fresh freshly
fret friable fried friend frieze fright frigid fringe fringed frizzle frog frolic front frontal frost froth frown
frozen fruit fry fuel fueled fugal fulfil fulfill full fully fumble fume fumes fun fund funds funeral fungal funnel
funny fur furious furl furlong furnace furnish furor furrow furry further furtive fury fuse fusion fuss fussily fussy
futile future fuzz fuzzed fuzzy gabble gable gadfly gadget gag gage gaiety gaily gain gainful gait gal galaxy gallant
galling gallon gallop gallows gallus gamble gambler game gamin gamma gamut gang gap gape gaping garage garb garbage
garbed garbled garden garland garment garner gas gaseous gash gasp gassing gate gateway gather gauche gaudy gauge
gaunt gauss gavotte gawk gay gayly gaze gear gearset gee gelding gem gender general genesis genetic genial genie
genius genre gentian gentile gentle gently gentry genuine genus geology germ gesture get geyser ghastly ghetto ghost
ghostly ghoul giant gibbet gift gifted gig giggle gild gilded gilt gingham ginkgo ginmill gird girl girlish give given
giver giving glacier glad glamor glance gland glare glaring glass glasses glassy glaze glazed gleam glean glee gleeful
glibly glide glimmer glimpse glint glisten glitter gloat global globe glom gloom gloomy glorify glory glove gloved
glow glower glowing glue glued glum glut glutton gnash gnaw gnome goad goal goat gobble god goddam goddamn goddess
godless godlike going goitre gold golden golf golfer golfing gone goner good goof goose gore gorge gory gospel gossip
gouge gourd gourmet gout govern gown gowned grab grace grade graded grading gradual grain gram granary grand grandly
grandma granite granny grant granted granule grape graph graphic grapple grasp grass grate gratify grating grave
gravel gravely gravid gravity gravy gray graze grease greasy great greater greatly greed greedy green greenly greens
greet grenade grey grief grieve grill grille grim grimace grimly grimy grin grind grip gripe gritty groan grocer
grocery groggy groin groom groomed groove grooved grope gross grossly ground grounds group grove grovel grow grower
growing growl grown grownup growth grub grudge gruff grumble grunt guard guess guest guide guided guilt guilty guitar
gulf gull gully gulp gulping gum gummy gun gunfire gunman gunner gunplay gunshot guru gush gust gusto gut guts gutter
guy guzzle gym gymnast gyrate habit habitat hack hacker haggard haggle haiku hail hair haircut hairdo haired hairy
half halfway hall hallway halo halogen halt halter ham hamlet hammer hamming hamper hand handbag handful handle
handled hands handy hang hangout hanker hapless happen happily happy harass harbor hard harden hardly hardy hare harem
harm harmful harmony harness harp harrow harsh harshen harshly harvest hasp haste hasten hastily hasty hat hatch hate
hated hateful hater hatless hatred haughty haul haunch haunt haunted have haven havoc hawk hawker hay hazard haze
hazel hazy head headed heading heal healer healing health healthy heap hear heard hearer hearing heart hearth hearty
heat heated heater heating heave heaven heavens heaver heavily heaving heavy hectic hedge heed heel heft hefty height
heights heir heist held helium hell hellion hello helm help helper helpful hem hen hence herald herb herd here hereby
herein heretic hero heroic heroics heroine heroism hex heyday hibachi hidden hide hideous hideout hiding high highly
highway hijack hike hilar hill hillock hilt hilum hinder hinge hint hip hipline hire hired hiss hissing history hit
hitch hither hitless hitter hive hoarse hobble hobby hock hoe hog hoist hold holder holding holdup hole holiday holler
hollow holster home homely homer honest honesty honey honor honored honour hood hoof hook hooked hookup hoop hoot hop
hope hopeful hopper horde horizon hormone horn horrid horror horse host hostess hostile hot hotel hotness hotshot
hound hour hourly hours house housing hover however howl howling hub hubbub hubris huddle huddled hue hug huge hugging
hulk hum human humane humble humbly humming humor hunch hundred hunger hungry hunt hunted hunter hunting hurdle hurl
hurler hurling hurried hurry hurt hurtle husband hush husky hustle hut hutment hyaline hydride hydrous hymn ice icebox
icicle icy idea ideal ideally idiom idiot idiotic idle idler idly idol idolize idyllic ignite ignore ileum ilk ill
illegal illicit illness image imagery imagine imaging imbed imbibe imitate immense immerse immoral imp impact impair
impale impart impasse impede impel imperil impetus impinge impious implant implike implore imply import impose impress
imprint improve impulse impute inane inboard incense inch incise incite incline inclose include income incubus incur
indeed index indict indoor indoors indorse induce induced induct indulge inept ineptly inert inertia infancy infant
infect infer infest infield infirm inflame inflate inflect inflict inflow influx inform ingest ingroup inhabit inherit
inhibit inhuman initial inject injure injured injury ink inkling inlay inlet inmate inn innate inner inning input
inquest inquire inquiry inroad insane insect insert inset inside insight insist insofar inspect inspire instal install
instant instead insulin insult insure insured intact intake integer intend intense intent inter interim interne intima
intimal intone intrude intrust inure invade invader invalid inveigh invent inverse invert invest invite invoke involve
inward iodide iodine ion ionic ionized irksome iron ironic irons irony island isle ism isolate isomer issue italic
itch item itemize ivory ivy jab jabber jabbing jackass jackdaw jacket jade jaded jagged jail jam jammed jangle janitor
japan jar jargon jarring jaunty java jaw jazz jazzy jealous jeep jeer jejunum jelly jerk jerking jerky jest jet
jetting jewel jeweled jeweler jibe jig jilt jingle jive job jockey jocose jocular jog joggle join joined joint jointly
joke joker jolly jolt jolted jonquil joss jostle jot journal journey joust jovial jowl joy joyous judge jug juice
juicy juju jukebox jumble jumbled jump jumpy jungle junior junk jurist juror jury just justice justify justly jutting
kale keen keenly keep keeping kerygma ketch ketosis kettle key keyed keyhole keynote khaki kick kickoff kid kidnap
kidney kill killer killing kind kinda kindled kindly kindred kinetic king kingdom kinship kiss kissing kit kitchen
kitten knack knead knee kneecap kneel knife knight knit knob knock knoll knot knotted knotty know knowing known
knuckle kosher lab label labeled labile labor laborer labour lace laced lack lackey lacking lacy lad ladder laden
ladened lady lag lager laggard lagoon laid lair laity lake lam lamb lament lamp lampoon lance land landing landler
lane languid languor lanky lantern lap lapel lappet lapse lapsed large largely larger larva larval lash lasher lashing
last lasting lastly lat latch late lately latent later latest lather latter laugh launch laundry laurels lavish law
lawless lawman lawn lawyer lax laxness lay layer layette laying layman layoff layout laze lazily lazy lead leaded
leaden leader leaders leading leaf leaflet league leak leakage lean leaning leap leaping learn learned learner lease
leash least leather leave leaving lecher lecture ledge ledger leech leer leering left lefty leg legacy legal legally
legatee legend legged leggy legion legume leisure lemma lemon lend lending length lengthy lens lentil leprosy lesion
less lessen lesser lesson let letdown lethal letter letters level lever levis levy lewd lexical lexicon liable liaison
liar liberal liberty library license lick licked licking lid lie life lift lifted lifter light lighted lighten lightly
lignite like likely liking lilac lilt limb limbo limit limited limp linden line lineage linear lined lineman linen
liner lineup linger lingual link links lint lion lionize lip lipped liquid liquor list listed listen lit liter literal
lithe litter little livable live lively liver livid living lizard load loaded loading loaf loan loathe lob lobby lobe
lobular lobule local locale locally locate located lock locker lockup locust lodge lodging loft lofty log logger
logging logic logical loins loiter lonely long longer longing look looking lookup loom loon loop loose loosely loosen
loot looted lope lord lordly lore lose loser loss losses lost lot lotion lots lotus loud loudly lounge louse lousy
love lovely lover loving low lower lowered lowland lowly loyal loyalty lucid lucifer luck luckily lucky lug luger
luggage lull lullaby lumbar lumber lummox lump lumpish lunar lunatic lunch lung lunge lurch lure lurid lurk lush lust
luster lustily lustre lusty luxury lyric lyrical macabre machine mad madam made madly madman madness maggot magic
magical magnet magnify magpie maid maiden mail mailbox mailman maimed main mainly majesty major majors make maker
makeup making malady malaise malaria male malign mama mamma mammal mammoth man manage manager mandate mane mangled
manhood mania maniac manic mankind manned manner manners manor manse mantel mantic mantle mantrap manual manure many
map maple mar marble marbles march mare margin marine marital mark marked marker market marking maroon marquee married
marrow marry marsh marshal martial martini martyr marvel mascara mash mask masking masonry mass massage masses masseur
massive mast masted master mastery mat match matched mate math mating matrix matron matted matter matting mature mauve
maxim maximal maximum may maybe mayor maze meadow meager meal mean meander meaning means measure meat meaty medal
meddle median mediate medical medium medley meek meekly meet meeting megaton melee melodic melody melon melt melting
member memoir memory men menace mend menial mental mention menu meq mercer mercury mercy mere merely merge merger
merging merit mermaid merrily merry mesh mess message messy metal meteor meter method metro mew micelle micron midair
midday middle midst midway midweek mien might mighty migrate mild mildly mile mileage milieu militia milk mill million
mimesis mimetic mimicry min mince mincing mind minded mindful mine miner mineral mingle minimal minimum mining minor
mint minuet minute minutia miracle mire mirror misdeed misery misfire mislay mislead misname misread miss missile
missing mission missive mist mistake misty misuse misused mite miter mitral mix mixed mixing mixture moan mob mobcap
mobile moblike mock mocker mockery mocking modal mode model modeled modern modest modesty modify moire moist moisten
molal mold molding molest mollify molten moment mommy monarch money monitor monk monkey monkish monocle monomer
monsoon monster month monthly moo mood moon moonlit mop moral morale morally morals more mores morgue morning morocco
morose morrow morsel mortal mortar mosaic moss most mostly motel moth mother motif motion motive motor mottle mottled
motto mould mound mount mounted mourn mourner mouse mousy mouth move mover movie moving mow mph much muck mucosa mucus
mud muddied muddle muddy muff muffle muffled muffler mulch mule mull mum mumble munch mundane murder murky murmur
muscle muse museum music musical musing musket must muster mutant mute muted mutely mutiny mutter mutton mutual muzzle
myeloid myriad myrrh myrtle mystery mystic mystify myth mythic nab nadir nag nagging nail naive naked nakedly name
namely narrate narrow nasal nasale nascent nasty natal nation native natural nature naught nausea naval navel navy nay
nazi near nearby nearer nearest nearly neat neatly neck necktie nectar nectary need needed needle neglect negro
negroid neither nemesis neo nephew nerve nerves nervous nest nestle net netlike nettle network neuter neutral never
new newborn newly news newsboy newsman newton next nibbed nice nicely nicety niche nickel niece nigger night nighted
nigra nimble nimbly nine ninety ninth nip nirvana nitrate noble nobody nod nodular nodule noise noisily noisy nomia
nominal non noncom none noon norm normal north nose nosed not notable notably notch note noted nothing notice notify
notion noun nourish novel novelty now nowhere nowise nozzle nuance nubbin nubile nuclear nucleus nude nudge null numb
number numbing nun nurse nursery nursing nurture nut nuzzle nymph oak oaken oat oath oatmeal obelisk obey object
oblige oblique obscene obscure observe obsess obtain obverse obvious occlude occupy occur ocean ocelot ocher octave
ocular odd oddly odds odious odor odyssey off offbeat offence offend offense offer office officer offset often ogle
ogress ohmic oil oiled oily okay old older oldster olive ology omen ominous omit once one oneness only onrush onset
onshore onward opaque open opened opener opening openly opera operate opinion opium oppose opposed oppress optical
optimal optimum opulent opus oral orally orange oration orator orb orbit orbital orchard orchid ordain ordeal order
ordered orderly ore organ organic orgy orient orifice origin ornate ornery orphan osseous ossify other ounce oust out
outcast outcome outcry outdo outdoor outdraw outer outface outfit outflow outgrow outing outlaw outlay outlet outline
outlive outlook outmode outplay outpost output outrage outrun outset outside outward oval oven over overall overeat
overlap overlay overrun overt overtly owe owl own owned owner oxcart oxen oxford oxidise oxygen oyabun oyster ozone
pace pacific pacify pacing pack package packed packet packing pact pad padded paddle padlock paean pagan page pageant
paging paid pail pain painful pains paint painted painter pair paired palace pale palette paling pall pallid pallor
palm pamper pan pander pane panel pang panic pansy pant panther panting pantry pants pap papa papal paper papers
papery par parable parade paradox paragon parcel parch parched pardner pardon pare parent parish park parked parking
parlay parlor parody parrot parry parson part partake parted partial parting partly partner parts party pass passage
passing passion passive past paste pasted pastel pastime pastor pasture pasty pat patch patched patent path pathos
pathway patient patina patriot patrol patron patter pattern paucity pause paved paw pay payable payday payment payroll
pea peace peacock peak peaked peaky peal pealing pear pearl pearly peasant pebble peck pecs peddle peddler peek peel
peeling peep peer peevish peg pelt pelting pelvic pelvis pen penalty penance pencil pending pennant penny pension
pensive peony people peopled pepper percent perch perfect perform perfume perhaps peril period perish perky permit
persist person persona pert pertain perturb perusal peruse pervade pester pet petal petite petrify petting pew pfennig
phalanx phantom phase phloem phoenix phone phoneme phonic phony photo photon phrase phylum physics pianism pianist
piano piazza pick picket picking pickle pickup picnic picture pidgin pie piece pier pierce piety pig pigeon pigment
pigskin pike pile pilfer pilgrim pill pillar pillory pillow pilot pimp pimple pin pinball pinch pinched pine ping pink
pinning pioneer pipe piper pique pirate pirogue piss pistol pit pitch pitched pitcher piteous pitfall pith pithy
pitiful pity pivot pixie pizza place placid plague plain plainly plan planar plane planet plank planned planner plant
planted planter plaque plasma plaster plastic plat plate platoon play played player playful playing plead please
pleased pleat pledge plenty pleura pleural pliant plight plod plot plow plowing pluck plug plum plumb plumber plummet
plump plunder plunge plunk plunker plush ply poach pocket poem poet poetic poetry point pointed poise poised poison
poke polar pole police policy polio polish polite politic polka poll pollen polls pomaded pommel pompous poncho pond
ponder pony pooch pool poor poorly pop pope poplin popping poppy popular porch pore pork porous port portal portend
porter portion portray pose poseur posse possess possum post poster posture postwar pot potato potency potent pothole
potshot potter pottery pouch poultry pounce pound pounder pour poverty powder powdery power powered powwow prairie
praise prance prank prattle pray prayer preach precast precede precise predict preempt preface prefer prefix prelude
premise premium premix prepare presage present preside press presto presume pretend pretext pretty prevail prevent
prewar prey price pricing prick prickly pride priest primacy primary primate prime primer priming primly prince print
prior prise prison privacy private privy prize pro probe probing problem proceed process procure prod produce product
profane profess proffer profile profit profits profuse program project prolong promise promote prompt prone pronoun
proof prop propel proper prophet propose prose prosody prosper protect protege protein protest proton proud proudly
prove proved proverb provide proviso provoke prowess prowl prowler pry pseudo psi psyche psychic public publish pucker
puckish puff puffed puke pull pulley pulling pulp pulpit pulsate pulse pulsing pummel pump pun punch puncher pundit
pungent punish punk punster punt puny pup pupate pupil puppet puppy pure purely purge purging purify purity purl
purloin purple purport purpose purse pursue pursued pursuer pursuit push pushing pushup pussy put putout putt puzzle
puzzled pyramid python quack quail quaint quake quaker qualify quality qualm quantum quarrel quart quarter quartz
quash quaver queen queer quell quench query quest quick quicken quicker quickie quickly quiet quietly quill quilt
quilted quintet quip quirk quirt quit quite quiver quiz quota quote rabbi rabbit rabble race racial racing racist rack
racket racy radar radial radiant radiate radical radio radish radius raft rafter rag rage ragged raid rail railing
railway rain rainbow raise raised raising rajah rake rally ram ramble ramp rampant rampart ramrod ranch rancher rancor
random range ranging rangy rank ranked ransack ransom rap rape raped rapid rapidly rapist rapport rapture rare rarely
rascal rasp rasping rat ratable rate rather rathole ratify rating ratio ration rattle rattler raucous ravage raving
raw rawhide ray razor rbi reach react read readapt reader readily reading ready reagent real realign realism realist
reality realize really realm reap rear rearing reason rebel reborn rebound rebuff rebuild rebuke rebut recall recede
receipt receive recent recess recital recite reckon reclaim recluse recoil recopy record recount recoup recover
recruit recur red redcoat redden reddish redeem redly redress reduce reduced reecho reef reek reeking reel reelect
reenact refer referee refill refine refined reflect reflex reform refrain refuel refugee refund refusal refuse refute
regain regal regale regard regime region regret regroup regular rehash reign rein reissue reject rejoice rejoin relace
relate related relax relaxed relay relearn release relent relic relief relieve relish relive reload rely relyric
remain remains remake remand remark remarry remedy remind remit remnant remodel remorse remote remount removal remove
removed remuda rename rend render rending renew renewal renewed rent reopen reorder repair repay repeal repeat repel
repent replace replant reply report repose repress reprint reproof reptile repulse repute request require reread rerun
rescind rescue reseal resent reserve reset reshape reside residue resift resign resiny resist resolve resort resound
respect respite respond rest restate restive restock restore result resume retail retain retard retch rethink retie
retina retinal retire retired retort retrace retract retreat return reunion reunite reuse rev revamp reveal revel
revelry revenge revenue revere revered reverie reverse revert revery review revile revise revised revival revive
revolt revolve reward rewrite rhino rhubarb rhyme rhythm rib ribbon rice rich richly rickety rid riddle riddled ride
rider ridge riffle rifle rift rig rigger right rightly rigid rigidly rigor rim rimless ring ringing rinse riot riotous
rip ripe ripen ripping ripple rise rising risk risky rite ritual rival rive river rivet rivulet road roadway roam roar
roarer roaring roast roasted rob robber robbery robe robust rock rocket rocky rod rodeo rogue roiling role roll roller
rolling roman romance romp roof roofer rooftop rookie room roomful rooms roost rooster root rooting rope rosary rose
rosebud rosette roster rostrum rosy rot rotary rotate rotated rotor rotten rotting rough roughen roughly round rounded
roundly roundup rouse rousing rout route routine rove row rowdy royal royalty rpm rub rubber rubbery rubbish rubble
rubric ruby ruck rudder ruddy rude rudely ruffian ruffle ruffled rug rugged ruin ruined ruinous rule ruled ruler
ruling rumble rumen rummage rumor rump rumpus run runaway rundown runner running runoff rupture rural rush rushing
russet rust rusted rustic rustle rustler rusty rut rutted sable sack sacred sad sadden saddle sadism sadly sadness
safe safely safety sag saga sage sagging sail sailing sailor saint sake salable salad salary sale salient saline
saliva sallow salmon salon saloon salt salty salute salvage salve salvo same sample sampler sand sandal sandy sane
sanity sap sapling sarcasm sardine sash sashay sassing satanic satiate satiety satin satire satiric satisfy sauce
sausage saute savage save saved saver saving savings savior savor savory savvy saw sawdust say scab scale scaled scalp
scamper scan scandal scant scanty scar scarce scare scared scarf scarify scarred scatter scene scenery scenic scent
scented scheme scherzo schism scholar school science scoff scold scoop scoot scope scorch score scores scorn scour
scoured scourge scours scout scowl scrap scrape scratch scrawl scrawny scream screech screen screw scribe script scrub
scud scuff scuffle scurry scuttle sea seagull seal sealing seam seaman sear search season seat seated seaweed sec
secede seclude second secrecy secret secrete sect section sector secular secure sedan sedate see seed seedbed seedpod
seek seeker seeking seem seep seepage seeping seer segment seismic seize seizure seldom select self selfish sell
selling semi senate senator send sending senile senior sense sensing sensor sensory sensual sentry sepia sept septic
septum serene serge serial series serious sermon serpent serum servant serve service servile session set setback
setting settle settled settler setup seven seventh seventy sever severe sew sewage sewer sewing sex sextet sexual sexy
shabby shack shackle shade shaded shading shadow shadowy shaft shaggy shake shaken shaking shaky shallow sham shamble
shame shanty shape shaped shapely shaping shard share shared sharer shark sharp sharpen sharply shatter shave shaved
shaven shaving shawl sheaf shear sheath shed sheep sheer sheet shelf shell shelter shelve sheriff sherry shield shift
shim shimmy shin shine shining shiny ship shirk shirt shit shiver shivery shock shocked shod shoe shoeful shoes shoot
shooter shop shopper shore short shorten shortly shorts shot shotgun shout shove shovel show shower showing showy
shred shrewd shriek shrill shrilly shrine shrink shroud shrub shrug shucks shudder shuffle shun shunt shut shutter
shuttle shy shyly siamese sic sick sicken sickish sickly side siding sidle siege sieve sift sigh sight sign signal
signed signify signore silence silent silk silky sill silly silo silver silvery similar simile simmer simple simplex
simply sin sincere sinewy sinful sing singe singer singing single singly sink sinking sinner sinning sinuous sip
sipper sir sire sirloin sis sister sit site sitting situate six sixteen sixth sixties sixty sizable size sized sizzle
skeet skeptic sketch skid skiff skill skilled skim skin skinny skip skirt skit skulk skull skunk sky skylark slab
slack slacken slacks slain slam slant slanted slap slash slashed slat slate slave slaver slavery sleek sleep sleeper
sleepy sleeve slender slice slick slicker slide sliding slight slim slime sling slink slip slipper slit slivery slob
sloe slogan sloop slop slope sloping sloppy slot slow slowing slowly sludge slug slugger sluice slum slumber slump
slurp slurred sly smack small smaller smart smash smashed smear smell smile smiling smirk smite smitten smoke smoking
smolder smooth smother smug smuggle snack snag snail snake snap snappy snare snarl snatch sneak sneaker sneer snicker
sniff snigger snip sniper snoop snore snoring snort snout snow snub snuffer snug snuggle snugly soak soaked soaking
soap soar soaring sob sober soberly social society sock sod sodden soddy sodium sofa soft soften softly soil soiled
sojourn solace solar solder soldier sole soled solely solemn solicit solid solidly solo soloist soluble solve solved
solvent somatic somber sombre some someday somehow someone son sonar song sonnet sonny soon sooner soothe sooty
sopping soprano sorb sorbed sordid sore sorely sorrel sorrow sorry sort sought soul sound soup sour source sourly
souse soutane south soviet sow space spaced spacing spade span spang spaniel spare spark sparkle sparrow sparse spasm
spatial spatter speak speaker spear special species specify speck specter speech speed speedy spell spend sphere spic
spice spider spidery spike spiked spill spin spine spiral spire spirit spirits spit spite splash spleen splice split
spoil spoiled spoke spoken sponge spongy sponsor spoon spore sport spot spouse spout sprain sprawl spray spread spree
spring sprint sprout sprue spume spur spurn sputnik sputter spy squad squall square squared squash squat squawk squeak
squeaky squeal squeeze squelch squint squire squirm squirt stab stable stack stacked stadium staff stage stager
stagger stain stained stair stairs stake stale stalk stalked stall stamen stammer stamp stance stand standby staple
star stardom stare stark starlet start starter startle startup starve starved state stately static station statue
stature status statute staunch stay stead steady steak steal stealth steam steamed steed steel steep steeple steeply
steer stein stellar stem stemmed step steppe steps stereo sterile stern sternal sternly sternum steroid steward
stewing stick sticky stiff stiffen stiffly stifle still stilt stilted sting stink stir stirrup stitch stock stocky
stoic stoical stoke stolid stomach stomp stone stonily stool stoop stooped stop storage store storied storm stormy
story stout stoutly stove stow strafe strain strait strand strange strap stratum straw stray streak stream street
stress stretch strew strict stride strife strike string stringy strip stripe striped strive stroke stroll strong strop
strum strung strut stub stucco stud studded student studio study stuff stuffed stuffy stumble stump stun stung stunned
stunt stupid stupor sturdy stutter style stylist suave sub subdue subdued subject sublime submit subpart subside
subsidy subsist subsoil subtend subtle subtly suburb subvert subway succeed success succor succumb such suck sucker
suction sudden suds sue suffer suffice suffix suffuse sugar suggest suicide suit suite suited suitor sulfur sulk
sulkily sulky sullen sulphur sultan sultry sum summary summate summer summon sun sunder sundial sundown sunken sunny
sunray sup super superb supine supper supply support suppose supra supreme sure surely surety surf surface surfeit
surge surgeon surging surly surmise surpass surplus survey survive sushi suspect suspend sustain swab swad swagger
swallow swami swamp swan swap sward swarm swart swarthy swash swatch swathe sway swear sweat sweater swede sweep sweet
sweetly swell swelled swerve swift swiftly swig swim swindle swing swingy swipe swirl swish switch swivel swollen
swoon swoop sword sworn symbol symptom synonym syntax syringa syrupy system table tableau tablet taboo tack tackle
tact tactic tactics tactile tactual tadpole taffy tag tagged tail tailor taint take taken takeoff takings tale talent
talk talking talks talky tall tallow tally tame tamper tan tang tangent tangle tangled tango tank tanker tanned
tantrum tap tape taped taper tapered tapping tar target tariff tarnish tarry tart tartly task taste tat taunt taut
tavern tawdry tawny tax taxable taxi taxing tea teacart teach teacher team tear tears tease teasing teat tedious tee
teem teen teenage teens teensy teeter tell telling temper tempest temple tempo tempt ten tenable tenancy tenant tend
tender tending tendon tenet tenfold tennis tenor tense tensely tension tent tenth tenting tenuous tenure tepid term
terms terrace terrain terrier terrify terror terse tersely test tested testify testily testing tether text textile
texture thank thanks thatch thaw thawing theater theatre theme then thence theorem theory therapy there thereby
therein thereof thereon thereto thermal thesis thiamin thick thicken thicket thickly thief thigh thill thin thing
things think thinker thinly third thirst thirsty thirty thither thong thorn though thought thrash thread threat three
thresh thrice thrifty thrill thrive throat throb throe throne throng through throw thrust thruway thud thuggee thumb
thump thunder thus thwack thwart thyroid tick ticket tidbit tide tidings tie tied tiger tight tighten tightly tile
tiled tilled tilt tilted tilth timber timbre time timed timely timer times timid timidly timing tin tine tinge tingle
tinker tinkle tinsel tint tiny tip tipped tipsy tiptoe tire tired tiredly tiring tissue tit titanic titer title titled
titter toad toast tobacco today toddy toe toffee toil toilet toiling token toll tomato tomb ton tonal tone toned
tongue tongued tonight tons too tool tooth top topic topical topped topple topsoil torch torment torn tornado torpid
torpor torrent torso torture toss total totally totemic toter totter touch touched tough tour tourist tousled tow
towboat towel tower town toxic toxin toy trace trachea tracing track tract tractor trade trader trading traffic
tragedy tragic trail train trained trait traitor tramp trample trance transit trap trapped trapper travel tray tread
treason treat treated treaty treble tree treetop tremble tremor trench trend trestle trial tribal tribute trick
trickle trigger trill trim trinket trio trip triple tripod trite triumph trivial troika troll troop trooper troops
trot trouble trough troupe trouser truck trudge true truly trumpet trundle trunk trust trusted trustee truth try
trying tsunami tub tube tubing tubular tubule tuck tuft tug tuition tulip tumble tumbler tumor tumour tumult tune
tuneful tuning tunnel turban turbine turf turkey turmoil turn turned turning tutor tweed tweedy tweeze twelfth twelve
twenty twice twiddle twig twin twine twinge twinkle twirl twirler twist twisted twitch two twofold type typhoid typhus
typical typify typing tyranny tyrant ugly ulcer ultra unable unaided unarmed unasked unaware unborn uncanny unclasp
uncle unclean uncork uncover uncurl under undergo undo undoing undone undress undue unduly unearth uneasy uneven
unfair unfit unfixed unfold ungodly unhappy unhitch unholy unhurt unified uniform unify union unique unit unite united
unity unjust unkind unknown unlace unlash unleash unlike unlined unload unlock unlucky unmask unmated unmixed unmoved
unpack unpaid unpaved unravel unready unreal unrest unruly unsaid unscrew unseen unsold unsung unteach unthaw untie
untold untried untrue untruth unused unusual unveil unwed unwind unwire unwise upbeat update upgrade uphold upkeep
upland uplift upper upraise upright uproar uproot upset upshot upstate uptake uptown upward upwards urban urchin urge
urgency urgent urging urinary urine urn usable usage use useable used useful useless user usher usual usually usurp
utensil utility utilize utmost utopia utopian utter utterly vacancy vacant vacate vaccine vacuum vague vaguely vain
valet valiant valid valley valor value valued values valve vandal vanish vanity vapor vaquero variant varied variety
various vary varying vase vast vastly vault vector veer vehicle veil veiled vein veined vellum velour velours velvet
velvety vending vendor vent venture veranda verb verbal verbena verdict verge verify vernal verse version vertex
vertigo verve very vessel vest vestige vet veteran veto vex viable viand vibrant vibrate vicar vice vicious victim
victor victory video vie view viewer viewers vigor vile village villain vine vinegar vintage vinyl violate violent
violet violin virgin virile virtue virus visage visible visibly vision visit visitor visored vista visual vital
vitally vitals vitamin vivid vividly vivify vocal vocalic vogue voice voiced void volcano volley voltage voltaic
volume vomit voodoo vote voter voting votive vouch vow vowel voyage voyager vulgar vulpine vulture wacky wad wade wads
wafer waffle waft wag wage wager wages waggle wagon wail wailful wailing waist wait waiter waiting waive wake wakeful
walk walking walkout wall wallet wallop wallow walnut walrus wan wand wander wane wangle waning want war warble ward
warfare warily warlike warm warmed warming warmly warmth warn warning warp warped warrant warrior wart wary wash
washed washing washup waste wasted watch watcher water watery watt wattle wave waver waving wavy wax waxed waxen
waxing waxlike way waylay ways wayside wayward weak weaken weakly wealth wealthy wean weaning weapon wear wearer
wearied wearily weary weather weave web wed wedding wedge wee weed weeds week weekday weekend weekly weep weeping
weigh weight weir weird weirdly welcome weld welfare well welter wend west western wet wetness wetting whack whale
wharf wheat wheedle wheel wheeze whence whet whiff while whim whimper whine whinny whip whir whirl whisk whiskey
whisky whisper whistle whit white whiten whiz whole wholly whoop whore whorl why wicked wicker wide widely widen widow
widowed widower width wield wife wifely wig wiggle wild wildcat wildly wile will willful willing willow wilt wily win
wince wind windbag winding window windy wine wing wingman wings wink winless winner winning winnow winter wintry wipe
wire wired wiry wisdom wise wisely wish wishing wisp wit witch withal withe wither within witness witty wizard wobble
wobbly woe woeful wolf woman womb wonder woo wood wooded wooden woods wool woolen woolly word wording words wordy work
worker working workman workout works world worldly worm worn worried worry worse worsen worship worst worsted worth
worthy wound wounded woven wrack wrangle wrap wrapped wrapper wrath wreak wreath wreathe wreck wrench wrestle wretch
wriggle wring wrinkle wrist writ write writer writhe writhed writing written wrong wrongly wry wryly xenon xylem yacht
yank yap yard yardage yarder yawn yawning yaws year yearly yearn years yell yelled yelling yellow yelp yelping yen yes
yet yield yoga yoke yokel yonder young younger youth yucca zeal zenith zero zest zigzag zinc zip zloty zombie zone
zoning zoo zoom
"""
"""Common words that are written small, of three to seven letters."""

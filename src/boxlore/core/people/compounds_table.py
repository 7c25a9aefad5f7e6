"""Things that begin with a name: WordNet 3.0; made by tests/core/people/make_compounds.py."""

THINGS = """
aare: river, rivers
aire: river, rivers
al: aksa martyrs brigades, alamayn, alamayns, aqabah, aqabahs, faran, farans, gamaa al islamiyya, itihaad al islamiya, jamaa al islamiyyah al muqatilah bi libya, ladhiqiyah, ladhiqiyahs, madinah, madinahs, nathir, nathirs, qahira, qahiras, qanoon, qanoons, rashid trust, sunna wal jamma, tawhid, tawhids
alex: boncayao brigade
alexander: archipelago, archipelagos
alma: mater, maters
amber: lily
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
bay: grass, laurel, laurels, leaf, leaved caper, lynx, of bengal, of biscay, of campeche, of fundy, of naples, of ob, rum, rum tree, rums, scallop, state, tree, willow, willows, window, windows, wreath, wreaths
bell: apple, apples, arch, book, buoy, cot, cote, cotes, cots, deck, foundry, gable, gables, glass, jar, like call, magpie, magpies, metal, morel, morels, pepper, push, ringing, ringings, seat, shape, shaped curve, tent, toad, toads, tower
bella: sombra, sombras
belle: de nuit, isle cress
ben: sira, siras
benjamin: bush
bill: of attainder, of entry, of exchange, of fare, of goods, of health, of indictment, of lading, of particulars, of review, of rights, of sale
billy: buttons, club, goat, goats
bird: cherry, cherry tree, dog, feed, feeder, feeders, food, foods, footed dinosaur, louse, louses, nest, of jove, of juno, of minerva, of night, of paradise, of prey, pepper, sanctuary, shot, shots, vetch
bishop: pine
black: africa, africas, and gold garden spider, and tan coonhound, and tan terrier, and white, apricot, apricots, archangel, archangels, art, arts, ash, backed gull, bamboo, bamboos, bass, bead, bean, bear, bearberry, bee, beech, bees, bile, biles, billed cuckoo, bindweed, bindweeds, birch, body, body radiation, book, box, bread, bream, bryony, buck, buffalo, calla, callas, capped chickadee, caraway, carpet beetle, cat, catechu, catechus, cherry, cherry tree, cock, cohosh, comedy, cottonwood, cottonwoods, crappie, crappies, crowned night heron, currant, currants, cypress pine, death, deaths, diamond, diamonds, disease, diseases, duck, economy, elder, elderberry, elders, english, english vernacular, eye, eyed pea, eyed susan, eyed susan vine, felt cup, flag, fly, footed albatross, footed ferret, forest, fox, fritillary, fronted bush shrike, grama, gramas, greasewood, greasewoods, grouse, guillemot, guillemots, gum, hand, haw, headed snake, hellebore, hellebores, hemlock, hemlocks, henbane, henbanes, hickory, hills, hole, hole of calcutta, hollander, hollanders, horehound, horehounds, huckleberry, humor, humour, ice, kite, knapweed, knapweeds, knot, larch, lead, legged tick, letter, locust, locusts, lotion, lotions, lovage, lovages, lung, lung disease, lungs, magic, magics, mallee, mallees, mamba, mambas, mangrove, mangroves, margate, margates, market, marlin, marlins, medick, medicks, morel, morels, moss, mulberry, music, musics, mustard, mustards, necked cobra, necked grebe, necked stilt, necked stork, nightshade, nightshades, oak, oaks, olive, olives, opal, opals, operation, operations, panthers, pea, peas, pepper, pine, plague, poplar, poplars, pudding, puddings, racer, racers, raspberry, rat, rat snake, rhinoceros, rock desert, rockweed, rockweeds, root rot fungus, rot, rudderfish, sage, sages, salsify, saltwort, saltworts, sea, sea bass, seas, september, september movement, septembers, snakeroot, snakeroots, spleenwort, spleenworts, spot, spruce, squirrel, squirrels, stem spleenwort, stemmed spleenwort, stork, storks, sumac, sumacs, swan, tai, tailed deer, tais, tea, teas, tie, tongue, tree fern, turnstone, turnstones, vernacular, vernacular english, vernaculars, vomit, vulture, vultures, walnut, walnut tree, walnuts, wattle, weevil, weevils, whale, widow, willow, willows, winged stilt
bobby: pin
box: beam, calf, calfs, camera, cameras, coat, elder, elders, end wrench, girder, girders, huckleberry, kite, kodak, kodaks, number, office, offices, pleat, seat, spring, tortoise, tortoises, turtle, white oak, wrench
briar: pipe
brook: thistle, thistles, trout, trouts
brooklyn: bridge
brown: algae, algaes, ash, bat, bear, bells, bent, bents, bread, bullhead, bullheads, butter, coal, creeper, creepers, cup, hickory, hyena, hyenas, lacewing, lacewings, lemming, lemmings, oak, oaks, onion sauce, pine, rat, rice, root rot fungus, rot, rot gummosis, sauce, snail, soft scale, study, sugar, swiss, tail moth, thrasher, thrashers, thrush, trout, trouts, university
buck: fever, fevers
bush: administration, administrations, baby, bean, clover, clovers, hibiscus, honeysuckle, honeysuckles, jacket, lawyer, lawyers, league, nasturtium, nasturtiums, pea, peas, poppy, shrike, shrikes, tit, tits, vetch, violet, violets, willow, willows
candy: apple, apples, bar, cane, corn, egg, kiss, store, thermometer, thermometers
captain: hicks
carina: fornicis
carolina: allspice, allspices, buckthorn, buckthorns, chickadee, chickadees, hemlock, hemlocks, jasmine, jasmines, lupine, lupines, moonseed, moonseeds, parakeet, parakeets, pond fern, spring beauty, wren, wrens
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
dick: test
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
field: artillery, balm, balms, bean, bindweed, bindweeds, brome, bromes, capacity, chamomile, chamomiles, chickweed, chickweeds, coil, corn, cricket, crop, day, effect transistor, emission, emission microscope, emissions, event, events, game, garlic, garlics, glass, glasses, goal, goals, guide, gun, hockey, hockey ball, horsetail, horsetails, hospital, hospitals, house, hut, huts, intensity, lens, lupine, lupines, magnet, magnets, maple, maples, marigold, marigolds, mint, mouse, mouse ear, mushroom, mustard, mustards, of battle, of fire, of force, of honor, of operation, of operations, of regard, of study, of view, of vision, pansy, pea, pea plant, peas, pennycress, poppy, press censorship, pussytoes, ration, sandbur, sandburs, scabious, sequential color television, sequential color television system, sequential color tv, sequential color tv system, soybean, soybeans, spaniel, spaniels, sparrow, sparrows, speedwell, speedwells, sport, strength, strength unit, strengths, tent, test, theory, thistle, thistles, trial, trials, trip, winding, windings, work, wormwood, wormwoods
fisher: cat
florence: fennel, fennels
forest: fire, goat, goats, red gum, tent caterpillar
fox: grape, grapes, hole, hunting, huntings, river, rivers, shark, squirrel, squirrels, terrier, terriers
francis: turbine, turbines
frank: breech, breech delivery
freddie: mac, macs
garden: balm, balms, cart, centipede, centipedes, chair, cress, current, currents, egg, forget me not, heliotrope, heliotropes, hose, huckleberry, lettuce, lettuces, loosestrife, loosestrifes, nasturtium, nasturtiums, of eden, orache, oraches, party, pea, pea plant, peas, pepper cress, pink, plant, rake, rhubarb, rhubarbs, rocket, roller, rollers, snail, sorrel, sorrels, spade, spider, spiders, state, strawberry, symphilid, symphilids, tool, trowel, truck, violet, violets, webworm, webworms
gene: chip, delivery vector, expression, expressions, linkage, linkages, mutation, mutations
george: town, towns, washington bridge
georgia: bark, home boy, pine
gilbert: and ellice islands, and sullivan, islands
ginger: ale, ales, beer, beers, nut, pop, snap
glen: canyon dam
gordon: setter, setters
grace: cup, note, of god
graham: bread, cracker, crackers, flour
gray: alder, alders, area, areas, birch, catbird, catbirds, flounder, fox, goldenrod, goldenrods, hen, hens, jay, kingbird, kingbirds, lemming, lemmings, market, matter, mullet, mullets, partridge, partridges, polypody, poplar, poplars, sage, sages, sea eagle, skate, snapper, snappers, sole, substance, substances, whale, willow, willows, wolf
green: adders mouth, alder, alders, algae, algaes, apple aphid, arrow arum, ash, bay, bean, bristlegrass, broom, card, corn, dinosaur, dinosaurs, dragon, dragons, eyed monster, fingers, foxtail, foxtails, fringed orchis, frog, gentian, gentians, gland, glands, goddess, gold, golds, goods, gram, grams, groceries, hellebore, hellebores, june beetle, lacewing, lacewings, lead ore, light, lizard, lizards, mamba, mambas, manure, market, mayonnaise, mayonnaises, monkey, monkey disease, mountain state, mountains, mushroom pimple, olive, olives, onion, onions, paper, party, pea, pea soup, peach aphid, peafowl, peafowls, peas, pepper, plover, plovers, revolution, revolutions, river, rivers, salad, salads, smut, smut fungus, snake, soap, soybean, soybeans, spleenwort, spleenworts, tailed towhee, tea, teas, thumb, turtle, turtle soup, winged teal, woodpecker, woodpeckers
grey: alder, alders, area, areas, birch, catbird, catbirds, flounder, fox, goldenrod, goldenrods, hen, hens, jay, kingbird, kingbirds, leaf pine, lemming, lemmings, market, matter, mullet, mullets, partridge, partridges, polypody, poplar, poplars, sage, sages, sea eagle, skate, snapper, snappers, sole, substance, substances, whale, willow, willows, wolf
gross: anatomy, domestic product, estate, estates, margin, margins, national product, profit, profit margin, revenue, revenues, sales, ton, tons
guy: cable, fawkes day, fawkes night, rope, wire
hall: of fame, of residence, pass
hank: panky
hazel: alder, alders, mouse, tree
heath: aster, asters, hen, hens, pea, peas, violet, violets
heather: bell, mixture, mixtures
hill: myna, mynas
holly: fern, ferns, leaf cherry, leaved cherry, leaved oak, leaves barberry
honor: killing, killings, system, systems
hope: chest, chests
house: arrest, cat, centipede, centipedes, finch, fly, mouse, of burgesses, of cards, of commons, of correction, of detention, of god, of hanover, of ill repute, of islam, of lancaster, of lords, of prayer, of prostitution, of representatives, of tudor, of war, of windsor, of worship, of york, organ, organs, paint, painting, paintings, party, snake, sparrow, sparrows, trailer, trailers, wren, wrens
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
jenny: ass, wren, wrens
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
lena: river, rivers
leo: the lion
letter: bomb, bond, box, case, of credit, of intent, of jeremiah, of mark and reprisal, of marque, of the alphabet, opener, openers, paper, security, stock, telegram, telegrams
lewis: and clark expedition
lily: of the incas, of the nile, of the valley, of the valley tree, pad, turf
line: at a time printer, block, double, drawing, drawings, drive, drive double, drive single, drive triple, engraving, engravings, feed, item, items, management, managements, of battle, of business, of control, of credit, of defence, of defense, of descent, of destiny, of duty, of fate, of fire, of flight, of force, of gab, of heart, of inquiry, of latitude, of least resistance, of life, of longitude, of march, of merchandise, of poetry, of products, of questioning, of reasoning, of saturn, of scrimmage, of sight, of succession, of thought, of verse, of vision, of work, organisation, organisations, organization, organizations, personnel, personnels, printer, printers, roulette, roulettes, score, single, spectrum, spectrums, squall, storm, triple
little: auk, auks, barley, bear, bighorn, bighorn river, bighorns, black ant, blue heron, brown bat, brown myotis, chief hare, club moss, clubmoss, dictionary, dipper, dippers, dog, ebony spleenwort, egret, egrets, finger, golden zinnia, grebe, grebes, hand, head snakeweed, horn, leaf fig, league, league team, missouri, missouri river, missouris, office, offices, owl, owls, potato, potatos, rhody, rock, sioux river, skate, slam, spotted skunk, theater, theaters, theatre, theatres, toe, wabash, wabash river
london: plane
long: beach, beech fern, billed marsh wren, bone, chain, chain molecule, clawed prawn, distance, distance call, division, divisions, dozen, dozens, eared bat, eared owl, fin tunny, fly, handled spade, haul, head coneflower, horned beetle, horned grasshopper, horse, hundred, hundreds, hundredweight, hundredweights, iron, island, island sound, islands, johns, jump, measure, moss, neck clam, pants, pepper, pillow, plane, run, saphenous vein, sleeve, sleeves, spurred violet, staple cotton, suit, tailed porcupine, tailed weasel, term memory, time, ton, tons, trousers, underwear, underwears, wave, whist, whists
lou: gehrigs disease
louis: dor, dors
lucy: in the sky with diamonds
magdalena: river, rivers
magnus: hitch
maja: squinado, squinados
malcolm: stock
mare: clausum, clausums, liberum, liberums, nostrum, nostrums
marguerite: daisy
mariana: islands
marie: strumpell disease
marine: animal, animals, archaeology, archeology, corps, corps intelligence activity, creature, creatures, glue, iguana, iguanas, law, laws, mine, museum, museums, mussel, mussels, turtle
mark: of cain
marsh: andromeda, andromedas, bellflower, bellflowers, buggy, clematis, cress, elder, elders, felwort, felworts, fern, ferns, gas, gentian, gentians, hare, harrier, harriers, hawk, hen, hens, horsetail, horsetails, mallow, mallows, marigold, marigolds, milkweed, milkweeds, orchid, orchids, pea, peas, pink, plant, st johns wort, tea, teas, trefoil, trefoils, wren, wrens
marten: cat
martin: luther king day, luther king jrs birthday
mason: and dixon line, and dixons line, bee, bees, city, dixon line, jar, wasp, wasps
matthew: walker, walker knot, walkers
may: apple, apples, beetle, blob, bug, day, fish, lily, wine
melissa: officinalis
melody: pipe
mercy: killing, killings, seat
minnie: bush, mouse
molly: miller, millers
moon: blindness, carrot, carrots, daisy, shell, shot, shots, trefoil, trefoils
morgan: city
morris: chair, dance, dancing, dancings
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
penny: ante, ante poker, arcade, arcades, bank, dreadful, dreadfuls, grass, stock
per: capita income, centum, centums, diem, diems
peter: pan collar
phoebe: bird
photo: credit, finish, offset printing, op, opportunity, ops
pia: mater, maters
picture: book, card, element, elements, frame, gallery, hat, palace, palaces, plane, postcard, postcards, rail, show, taking, takings, tube, window, windows, writing, writings
pierre: laporte bridge
pilar: cyst, cysts
place: bet, kick, mat, name, of birth, of business, of origin, of worship, setting, settings
poll: parrot, tax
polly: fish
pond: apple, apple tree, apples, bald cypress, cypress, lily, pine, scum, scum parasite
pool: ball, cue, stick, table
poppy: day, mallow, mallows, seed
potter: bee, bees, wasp, wasps
price: bracket, competition, competitions, control, cut, cutting, cuttings, floor, freeze, gouging, gougings, increase, index, level, list, of admission, reduction, reductions, support, tag, to earnings ratio, war
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
rosa: banksia, banksias, canina, caninas, chinensis, damascena, damascenas, eglanteria, eglanterias, laevigata, laevigatas, moschata, moschatas, multiflora, multifloras, odorata, odoratas, pendulina, pendulinas, spithamaea, spithamaeas
rose: acacia, acacias, apple, apple tree, apples, bay, bed, beetle, bug, campion, campions, chafer, chafers, chestnut, chestnuts, colored pastor, colored starling, garden, geranium, geraniums, globe lily, gum, hip, hips, leek, leeks, mallow, mallows, moss, of china, of jericho, of sharon, oil, periwinkle, periwinkles, pink, quartz, quartzs, water, window, windows, wine
ross: sea, seas
ruby: crowned kinglet, crowned wren, spinel, spinels, wood, woods
rusty: blackbird, blackbirds, grackle, grackles, rig, woodsia, woodsias
ruta: graveolens
sabine: pine, river, rivers
sally: lunn, lunns
sam: browne belt
sandy: mushroom
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
teddy: bear, boys
terry: cloth, cloths, towel
theodore: roosevelt memorial national park
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
veronica: agrestis, americana, americanas, anagallis aquatica, arvensis, beccabunga, beccabungas, chamaedrys, michauxii, michauxiis, officinalis, peregrina, peregrinas, serpyllifolia, serpyllifolias
victoria: cross, day, de durango, falls, land, nyanza, nyanzas, plum, plums, sandwich, sponge
viola: arvensis, blanda, blandas, canadensis, canina, caninas, clef, clefs, conspersa, conspersas, cornuta, cornutas, da braccio, da gamba, damore, damores, ocellata, ocellatas, odorata, odoratas, pedata, pedatas, pubescens, reichenbachiana, reichenbachianas, rostrata, rostratas, striata, striatas, sylvatica, sylvaticas, tricolor, tricolor hortensis, tricolors
violet: flowered petunia, suksdorfia, suksdorfias, wood sorrel
virginia: beach, bluebell, bluebells, chain fern, cowslip, cowslips, creeper, creepers, crownbeard, crownbeards, deer, deers, fence, ham, mallow, mallows, oyster, pine, reel, serpentaria, serpentarias, serpentary, snakeroot, snakeroots, spring beauty, stock, strawberry, thimbleweed, thimbleweeds, waterleaf, waterleafs
walt: disney world, whitman bridge
weaver: finch
wendy: house
west: africa, african, africans, africas, bank, bengal, bengals, berlin, berlins, by north, by south, chadic, chadics, coast, coast hemlock, country, end, germanic, germanic language, germanics, germany, highland white terrier, indian cherry, indian jasmine, indian satinwood, indian smallpox, indian snowberry, indies, malaysia, malaysias, midland, midlands, nile encephalitis, nile encephalitis virus, nile virus, northwest, northwests, pakistan, pakistans, palm beach, point, side, southwest, southwests, sussex, tocharian, tocharians, virginia, virginias, wind, yorkshire, yorkshires
white: admiral, admirals, alder, alders, ant, ants, arsenic, arsenics, ash, aspen, aspens, avens, backlash, baneberry, basswood, basswoods, bead, bean, bedstraw, bedstraws, beech, beer, beers, bellied swallow, berry yew, birch, blood cell, blood corpuscle, book, bread, breasted nuthatch, broom, bryony, burgundy, cake, camas, campion, campions, cedar, cedars, cell, cells, chinned petrel, chocolate, chocolates, cinnamon, cinnamon tree, cinnamons, clover, clovers, coat hypertension, cockle, cohosh, corpuscle, corpuscles, crappie, crappies, croaker, croakers, crowned sparrow, currant, currants, cypress, cypress pine, daisy, dead nettle, dipladenia, dipladenias, dogs tooth violet, dogtooth violet, dwarf, dwarf star, elephant, elephants, elm, elms, faced hornet, fairy lantern, false indigo, feather, feldspar, feldspars, fir, firs, flag, footed mouse, fox, fringed orchid, fringed orchis, fritillary, fungus, globe lily, gold, golds, goods, headed stilt, heart hickory, heat, hellebore, hellebores, honeysuckle, honeysuckles, horehound, horehounds, horse, horse nettle, house, knight, lead, lead ore, leather, leaved rockrose, leg, legs, lettuce, lettuces, lie, lily, lipped peccary, lotus, lung, lungs, lupine, lupines, madder, magic, magics, mallee, mallees, mallow, mallows, mangrove, mangroves, mans burden, mans foot, marlin, marlins, matsutake, matsutakes, matter, meat, meats, melilot, melilots, metal, milkweed, milkweeds, mountain ash, mulberry, mullein, mulleins, mullet, mullets, mustard, mustards, nile, niles, noise, oak, oaks, onion sauce, pages, paper, pelican, pelicans, pepper, perch, pine, pine blister rust, pine rust, plague, popinac, popinacs, poplar, poplars, potato, potato vine, potatos, pox, prairie aster, rayed mules ears, rhinoceros, rice, river, rivers, rocket, room, rumped shrike, russia, russias, rust, sage, sages, sale, sales, sanicle, sanicles, sauce, sea, seabass, seas, separatism, separatisms, shark, sheep, sheeps, silk cotton tree, slime mushroom, snakeroot, snakeroots, snapdragon, snapdragons, spanish broom, spruce, squire, stemmed filaree, stork, storks, stringybark, stringybarks, sturgeon, sturgeons, supremacy, sweet clover, tai, tail, tailed deer, tailed jackrabbit, tailed kite, tailed sea eagle, tais, thistle, thistles, throated sparrow, tie, tie and tails, tipped shark, titi, titis, topped aster, trumpet lily, turnip, turnips, violet, violets, vitriol, walnut, walnuts, water, wax tree, whale, willow, willows, wine, wolf, wood aster, yam, yams, zinnia, zinnias
will: power
william: and mary
winter: aconite, aconites, cherry, cress, crookneck, crookneck squash, crooknecks, currant, currants, fern, ferns, flounder, flowering cherry, hazel, hazels, heath, heaths, heliotrope, heliotropes, jasmine, jasmines, melon, melon vine, melons, mushroom, olympic games, olympics, purslane, purslanes, rose, roses, savory, savoury, solstice, solstices, squash, squash plant, sweet, sweets, urn, urns, wren, wrens
wolf: bean, cub, fish, pack, pup, spider, spiders
wood: alcohol, alcohols, anemone, anemones, ant, ants, aster, asters, avens, block, chisel, coal, cudweed, cudweeds, drake, drakes, duck, engraving, engravings, fern, ferns, file, frog, garlic, garlics, grain, hen, hens, hoopoe, hoopoes, horsetail, horsetails, hyacinth, hyacinths, ibis, laurel, laurels, lily, meadowgrass, mint, mouse, nettle, pewee, pewees, pigeon, pigeons, poppy, pulp, pussy, rabbit, rat, sage, sages, shavings, sorrel, sorrels, spirit, spurge, spurges, stork, storks, strawberry, sugar, swallow, tar, thrush, tick, vinegar, vinegars, violet, violets, vise, vises, warbler, warblers, widgeon, widgeons
woods: alloy, metal
young: bird, carnivore, carnivores, fish, mammal, mammals
"""
"""The first word, and what may follow it, folded and without apostrophes, line by line."""

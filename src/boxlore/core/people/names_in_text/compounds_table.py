"""Things that begin with a name: WordNet 3.0; made by tests/core/people/names_in_text/make_compounds.py."""

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

WORDS = """
abandon abbot abdomen abet abide abiding ability abject able aboard abode abolish abound about above abroad abrupt
abscess absence absent absorb abstain absurd abuse abyss academy accent accept access acclaim accord accost account
accrue accuse ace acetone ache achieve acid acquire acre acreage acres across act acting action active actor actress
actual actuate acute acutely adamant adapt add address adhere adjoin adjourn adjunct adjust admire admit adopt adopted
adorn adult advance adverb adverse advice advise aerated aerator aerial aerosol afar affair affairs affect affirm
affix affixed afford affront aflame aflare afraid after again age aged agency agenda agent agitate ago agony agree
ahead aid aide ailing ailment aim aimless air airport airs airway airy aisle alarm album albumin alcohol alert algae
alibi alien align alike alive alkali all allege alleged allot allow ally almost aloes alone along aloud already also
alter always amateur amaze amazed amazing amber amble ambush amend amended amiable ammo amount amp ample amplify amply
amuse amusing analogy analyse analyst analyze anarchy anatomy anchor ancient andrena anemia anew angel angelic anger
angle angrily angry angst anguish angular animal animate anion anionic ankle annoy annoyed annual anode answer ant
antenna anti antigen antique anxiety anxious any anyhow anymore anyway aorta apache apart apex apiece apology appeal
appear appease applaud apply appoint approve apron apt aqueous arc arch arched arctic ardor area argon argue arise arm
armed armor armored armpit arms army around arouse aroused arraign arrange array arrest arrival arrive arrow arroyo
art artery article artist arts ascend ascribe ash ashen ashore aside ask asleep aspect aspire ass assail assault assay
assent assert assess asset assign assist assume assure assured astound astride athlete atom atomic atrophy attach
attack attain attempt attend attest attic attire attract audible audit augment august aunt aurally author auto autumn
avail average avert avocado avoid await awake awaken award aware away awe awed awful awfully awkward awry axe axis
babble babe baby back backer backing bacon bad badge badger badly badness bag bait bake baked balance bald balk ball
ballad ballet balloon ballot ban banana band bandage bandit bang banging banish bank banker banner banquet banshee
banter baptize bar barbell bare barely bargain barge bark barley barn barrage barrel barren barrier base based basic
basin basis bask basket bass bastard baste bat bath bathe bathing bathtub baton batter battery batting battle bawl bay
bayonet beach beak beam bean bear beard bearded bearer bearing beast beat beaten beauty beckon become bed bedding
bedroom bee beech beef beer befall befit before beg beget begin beguile behalf behave behind behold being belabor
belch belie belief believe bell bellow belly belong beloved below belt bemoan bench bend bended benefit bent bequest
berate berlin berry berth beseech beset besides besiege best bestow bet bethink betray better between bevel bevy
beware beyond bible biceps bicycle bid big bigger bill billion bin bind binding biology biopsy bird birdie birth
biscuit bishop bit bite biting bitter bizarre black blacken blade blame bland blandly blank blanket blare blast
blatant blaze blazing bleach bleak bleakly bleat bleed blend bless blessed blight blind blindly blink blister blithe
bloat blob block blond blonde blood bloody bloom blossom blot blow blower blowing blue blues bluff blunder blunt blur
blurred blush bluster board boast boat boating bodily body bog bogey bogus boil boiling bold boldly bolster bolt bomb
bomber bombing bond bone bonfire bonnet bony book booker booking boom boon boost boot booth border bore bored boredom
boring born borough borrow bosom boss bother bottle bottom bough bounce bound bounded bounds bouquet bourbon bout
bovine bow bowed bowl box boxcar boy boycott boyhood boyish brace bracing brag braid brain brake brakes bramble branch
brand brandy brass bravado brave bravely brazen brazil breach bread breadth break breakup breast breath breathe breed
breeze brevity bribe brick bride bridge bridle brief briefly brier brigade bright brindle bring brisk briskly bristle
brittle broad broaden broil broke broken bronc bronze bronzed brood brook broom brothel brother brow brown bruise
brush brushed brushy brutal brute bubble buck bucket buckle bud buddy budge budget buff buffalo buffer buffet bug
buggy bugle build builder buildup built bulb bulge bulging bulk bulky bull bullet bully bum bump bunch bundle bunk
bunker buoyant burden bureau burgeon burial buried burly burn burned burning burr burrow burst bury bus busboy bush
bushel busily bustle busy but butt butter button buy buying buzz buzzing bygone bypass cab cabana cabin cabinet cable
cackle cadenza cadre cafe cage cake calcium calf caliber call caller callous calm calmly calving camera camp camper
camping campus can cancel cancer candle cane cannon canon canteen canter canvas canvass canyon cap capable cape
capital capsule captain captive capture car carbine carbon carcass card care career careful caress cargo carnal carpet
carping carrier carry cart cartoon carve carved carven carving case cash cast castle casual cat catalog catcall catch
catcher cater cathode catkin cattle causal cause caution cavalry cave cavern cavort cease ceiling cell cellar cement
cent center central century certain certify chafe chagrin chain chair chamber chance change changed channel chant
chaos chaotic chapel chapter charge charged charger charity charm chart charter chase chat chatter cheap cheat check
cheek cheer cheery cheese chemist cherish chest chew chick chicken chide chief chiefly child chill chilly chimney chin
china chip chisel choice choir choke choked choose chop chord chore chorine chortle chorus chosen christ chrome
chronic chuckle chunk church chute cigar cinch cipher circle circuit circus cite citizen city civic civil clad claim
clam clamber clammy clamor clamp clang clangor clap clarify clarity clash clasp class classic clatter clause claw clay
clean cleaner cleanly clear cleared clearly cleft clench clergy clerk clever cliche click client cliff climate climax
climb clinch cling clip clobber clock clod clog close closed closely closer closet closeup closing clot cloth clothe
clothes cloud clouded clown club cluck clue clump clumsy cluster clutch coach coal coarse coast coastal coat coax
coaxing cock cockpit cocky coconut coddle code coerce coffee coffin coil coin cold coldly collage collar collect
college colon colonel colony color colored colors colt column comb combat combine come comedy comfort comic coming
command commend comment commit common commune commute compact company compare compass compel compete compile complex
comply compose compost compute comrade concave conceal concede concept concern concert concur condemn conduct cone
confess confide confine confirm conform confuse congeal connect connote conquer consent consign consist consort
consult consume contact contain contend content contest context contour control convene convert convey convict cook
cooking cool coolant cooling coolly coop cop cope copper copy cord core corn corner coroner corps corpse corral
correct corrupt cortex cosmic cosmos cost costly costume cottage cotton couch cough council counsel count counter
country county coup couple coupon courage course court cousin cover covered cow coward cowboy cows coyness cozy cps
crack cracked crackle cradle craft crane crash crave crawl crazily crazy creak cream create creator credit credo creed
creek creep crest crew crib crime crimson cringe cripple crisis crisp critic crook crooked croon crop cross crouch
crow crowd crowded crown crucial crucify crude crudity cruel cruelty cruise crumble crummy crunch crusade crush
crushed crusher crusted crutch cry cryptic crystal cube cubism cubist cuddle cult cultist culture cunning cup curb
cure curio curious curl curly current curse cursed curtail curtain curve curved curving cushion cuss custom cut cute
cutting cycle cyclist cynical cyst dab dad daddy daily dainty dam damage damn damned damp dampen dance dancer dancing
danger dangle danish dapper dare daring dark darken darling darned dart dash data date datum dawn day dazed dazzle
deacon dead deadly deaf deal dealer dear dearly death debate debris debt debut dec decade decay deceive decency decent
decide deck declaim declare decline decree decry deduce deduct deed deem deep deepen deeply deer default defeat defect
defend defense defer defiant define defined defraud defray defy degree deity delay delayed delight deliver deltoid
demand demon demure denial denote dense density dent dental dentist deny depart depend depict deplore deploy depose
deposit depress deprive depth deputy deride derive derived descend descent desert deserve design desire desired desk
despair despise dessert destine destiny destroy detach detail details detect detest develop deviate device devil
devise devote devoted devotee dew diagram dial dialect dialyze diam diamond diary dice dickens dictate dictum die diet
dietary differ diffuse dig digest dignity dilate dilemma dilute dim dime dimly din dine dingy dinner dip dipole dipper
direct dirge dirt dirty disarm disband disc discard discern discuss disdain disease disgust dish disk dislike dismay
dismiss disobey dispel display dispose dispute disrupt dissent distal distant distill distort disturb ditch divan dive
diverse divert divide divided divine divorce dizzy docile dock doctor dodge dog dogged dogma doleful dollar domain don
donate done donor doom doomed door doorman doorway dormant dosage dose dotted double doubt dough dove down dowry doze
dozen dozens drab draft drag dragon drain drama drape draped drapery draught draw drawer drawing drawl drawn dread
dream dreamy dreary dregs dress dressed dressy dribble dried drift drill drink drip drive driven driver driving
drizzle drone drop droplet drought drown drug drugged drum drunk drunken dry dual dub dubious duck duct due duel
duffer dugout dull dulled dully duly dumb dump dun dung dungeon dusk dusky dust dusty duty dwarf dwell dweller dwindle
dying dynamic each eager eagerly ear earlier early earn earned earnest earth earthy ease easel easily east easter
eastern easy eat eating echo eclipse economy ecstasy edema edge edged edgy edifice edition editor educate efface
effect effort egg eggs ego egotism egotist eight eighth eighty either eject elapse elastic elation elbow elder elderly
eldest elect elected elegant element elevate eleven elfin elicit elite eluate elude elusive elution embark embed
emblem embody embrace emerge eminent emit emotion empire employ empty emulate enable enact enamel encamp enchant
enclose end endear ending endless endorse endow endure enemy energy enforce engage engaged engine engulf enhance
enjoin enjoy enlarge enlist enliven enmesh enough enraged enrich enrol enroll ensue ensuing ensure entail enter entire
entitle entity entropy entrust entry envelop envy enzyme epic episode epithet epoch equal equally equate equip era
erase erect erode erotic err errand error erudite erupt escape escheat eschew escort espouse essay essence estate
esteem eternal ethic ethical ethnic ethos evade evasive even evening event ever evident evil evoke evolve exact
exactly exalt exalted examine example exceed excel except excess excite excited exclaim exclude excuse execute exempt
exert exhale exhaust exhibit exist exotic expand expanse expect expel expend expense expert expire explain explode
exploit explore export expose exposed expound express extend extent extra extract extreme eye eyebrow eyed eyelid eyes
fabled fabric facade face faced facet facing fact faction factor factory faculty fade faded fail failure faint faintly
fair fairly fairway fairy faith fake falcon fall falling falloff fallout false falsify falsity falter fame famed
family famous fan fancy fantasy far faraway farce fare farm farmer farming farther fascism fashion fast fasten faster
fat fatal fate fateful father fathom fatigue fault favor favored fear fearful feast feat feather feature federal fee
feeble feed feeding feedlot feel feeling feline fell fella fellow female fence fencing fertile fervent festive fetch
fete fever few fewer fiat fiber fibrin fiction fidget field fiend fierce fiery fifteen fifth fifties fifty fig fight
fighter figure file filing fill filled filling film filmed filter filthy final finale finally finance find finding
fine finely finger finish finite fire firearm firing firm firmly first fiscal fish fishing fist fit fitness fitting
five fix fixed flag flail flair flame flaming flank flannel flap flare flash flashy flask flat flatly flatten flatter
flatus flaunt flavor flaw flee fleet flesh flick flicker flight flimsy flinch fling flip float floc flock flood floor
flop florist flour flout flow flower flowing flu fluid flurry flush flushed flutter flux fly flying foam foamy focal
focus foe fog foil fold foliage folk folksy follow folly fond fondly food fool foolish foot forbid force forced forego
foreign foreman foresee forest forever forfeit forge forget forgive fork forlorn form formal formed former formula
forsake fort forth fortify fortune forty forward foster foul found founder four fourth fox foyer fracas fragile frail
frame frank frankly frantic fraud freak free freedom freely freeman freeway freeze freight frenzy fresh fret friable
fried friend frieze fright frigid fringe fringed frog frolic front frost frown frozen fruit fry fuel fulfil fulfill
full fully fumble fume fumes fun fund funds funeral funnel funny fur furious furnish furor furrow further fury fuse
fusion fuss futile future fuzzy gadfly gadget gag gage gaiety gaily gain galaxy gallant gallon gallop gamble game
gamut gang gap gaping garage garbage garden garment gas gasp gassing gate gather gaudy gauge gaunt gauss gay gaze gear
gee gelding gender general genesis genetic genial genius gentile gentle gently genuine genus gesture get ghastly
ghetto ghost ghoul giant gift gifted giggle gilded gilt gingham ginmill girl girlish give given glad glance gland
glare glaring glass glasses glassy glaze gleam glean glee gleeful glibly glide glimpse glint glisten glitter globe
gloom gloomy glorify glory glove glow glower glowing glue glued gnash gnaw goad goal goat gobble god goddam goddamn
goddess going goitre gold golden golf golfer gone goner good goose gospel gossip gouge gourmet govern gown grab grace
grade gradual grain gram grand grandma granite granny grant granted grape graph graphic grapple grasp grass gratify
grating grave gravel gravely gravid gravity gray graze grease greasy great greater greatly green greet grenade grief
grill grim grimace grimly grimy grin grind grip groan grocer groom groove grope gross ground grounds group grove
grovel grow growing growl grown grownup growth grub grudge gruff grumble grunt guard guess guest guide guided guilt
guilty guitar gulf gull gulp gulping gum gun gunfire gunman gunner gush gust gut guts gutter guy gym gymnast habit
habitat hack haggard haggle hail hair haircut haired hairy half halfway hall hallway halo halogen halt hammer hamper
hand handbag handful handle hands handy hang hanker happen happily happy harass harbor hard harden hardly harm harmony
harness harp harrow harsh harshly harvest haste hasten hastily hat hatch hate hateful hatless hatred haul haunch haunt
have havoc hawk hay hazard haze head headed heal healing health healthy heap hear hearing heart hearth heat heated
heating heave heaven heavens heaver heavily heaving heavy hedge heed heel height heights heir helium hell helm help
helper helpful hem hen hence herald herb herd here hereby hero heroic heroine heroism heyday hidden hide hideous
hideout hiding high highly highway hijack hike hilar hill hillock hilum hinder hinge hint hip hire hired hissing
history hit hitch hither hitter hive hoarse hobble hobby hold holder hole holiday holler hollow holster home homely
homer honest honesty honey honor honored honour hoof hook hooked hoop hoot hop hope hopeful horde horizon hormone horn
horror horse host hostess hostile hot hotel hound hour hours house housing hover however howl howling hub huddle
huddled hue hug huge hulk hum human humble humbly humming humor hunch hundred hunger hungry hunt hunter hunting hurdle
hurl hurler hurried hurry hurt hurtle husband hush husky hustle hut hutment hydride hymn ice icebox icy idea ideal
ideally idiom idiot idiotic idle idler idly idol idyllic ignite ignore ill illegal illness image imagery imagine imbed
imitate immense immerse immoral impact impair impale impart impasse impede impetus impious implike implore imply
import impose impress imprint improve impulse impute inch incite incline include income incur indeed index indict
indoor induce induct indulge inept inert infancy infant infect infer infest infield inflame inflate inflict inform
ingest inhabit inherit inhibit inhuman initial inject injure injured injury ink inlet inmate inn inner inning input
inquire inquiry insane insect insert inside insight insist insofar inspect inspire instal install instant instead
insulin insult insure intact intake integer intend intense intent inter interim intima intone intrude inure invade
invader invent inverse invest invite invoke involve inward iodide iodine ion ionic ionized iron irons irony island ism
isolate issue itch item itemize ivory jab jabber jackass jacket jade jaded jagged jail jam janitor japan jar jaunty
java jaw jazz jealous jeep jeer jejunum jelly jerk jerking jerky jest jet jewel jeweled jeweler jilt job jockey
jocular join joint jointly joke jolly jolt jolted journal journey jovial jowl joy joyous judge juice juicy jumble
jumbled jump jungle junior junk juror jury just justice justify justly jutting keen keenly keep keeping kerygma
ketosis key keyhole keynote kick kickoff kid kidnap kidney kill killer killing kind kinda kindly kindred kinetic king
kingdom kinship kiss kissing kit kitchen kitten knack knee kneel knife knight knit knob knock knot know knowing known
knuckle lab label labeled labor laborer lack lacking lacy lad ladder laden lady lag lagoon laity lake lam lamb lamp
lance land landing lane languid lanky lantern lap lapse large largely larger larva lash lashing last lasting lat latch
late lately latent later latest lather latter laugh launch laurels lavish law lawman lawn lawyer lay layer laying
layman layoff layout lazily lazy lead leaden leader leaders leading leaf league leak lean leap leaping learn learned
lease leash least leather leave lecture ledger leer leering left lefty leg legal legally legend leisure lemma lemon
lend length lengthy lens lesion less lessen lesser lesson let lethal letter level levy lexical lexicon liable liaison
liar liberal liberty library license lick licking lid lie life lift lifter light lighted lightly lignite like likely
liking lilac limb limit limited limp line lineage linear lined linen linger link lint lion lionize lip liquid liquor
list listen liter literal litter little live lively liver livid living load loaded loading loaf loan loathe lobby lobe
lobule local locale locally locate located lock locker lockup locust lodge lodging loft lofty log logic logical lonely
long longer longing look looking lookup loom loon loop loose loosely loosen loot lord lore lose loser loss losses lost
lot lots loud loudly lounge louse lousy love lovely lover loving low lower lowered lowly loyal loyalty lucid lucifer
luck lucky lug luggage lull lumber lump lunar lunch lung lunge lurch lure lurid lurk lust luster lusty luxury lyric
machine mad made madly madman madness maggot magic magical magnet magnify maid maiden mail mailbox maimed main mainly
major majors make maker making malady malaise malaria male mama mamma mammal man manage manager mandate manhood mania
maniac manic mankind manned manner manners mantel manual manure many map maple mar marble marbles march mare margin
marine marital mark marked market marking maroon married marrow marry marshal martini martyr marvel mask masonry mass
massage masses masseur massive mast master mastery mat match mate mating matter mature mauve maximal maximum may maybe
mayor maze meadow meager meal mean meaning means measure meat medal medical medium meek meekly meet meeting melee
melody melon melt melting member memory men menace mend mental mention meq mercury mercy mere merely merge merger
merit merrily merry mesh mess message metal meteor meter method micelle micron middle midst midway might mighty
migrate mild mildly mile militia milk mill million mimesis mimetic min mince mind minded mindful mine miner mineral
mingle minimal minimum mining minor minute miracle mirror misdeed misery mislead miss missile missing mission mist
mistake misuse mite mix mixed mixing mixture moan mob mobile moblike mock modal mode model modern modest modesty
modify moist moisten molal mold molest molten moment mommy monarch money monitor monk monkey monocle monsoon monster
month monthly mood moon mop moral morale morally morals more morning morocco morose morrow morsel mortal mortar mosaic
most mostly moth mother motif motion motive motor mottle motto mound mount mounted mourn mourner mouse mouth move
mover movie moving mph much mucosa mucus mud muddy muffle muffled muffler mulch mule mumble munch mundane murder murky
murmur muscle muse museum music musical musket must muster mute mutely mutiny mutter mutton mutual muzzle myriad myrrh
mystery mystic myth nab nadir nag nail naive naked name namely narrow nasal nasty nation native natural nature nausea
naval navel navy nay nazi near nearby nearer nearest nearly neat neatly neck necktie nectar need needed needle neglect
negro neither nemesis neo nephew nerve nerves nervous nest nestle net network neutral never new newborn newly news
newsboy newsman next nice nicely niche nickel nigger night nine ninety ninth nip noble nod noise noisy nomia nominal
non noon norm normal north nose not notable notably notch note noted nothing notice notify notion noun nourish novel
novelty now nowhere nowise nozzle nuance nuclear nucleus nude nudge numb number numbing nun nurse nursery nut nymph
oak oath obey object oblige oblique obscene obscure observe obsess obtain obvious occupy occur ocean odd oddly odor
off offend offense offer office officer offset often ogle oil oily okay old older oldster olive omen ominous omit once
one oneness only onrush onset onshore onward opaque open opened opener opening openly opera operate opinion opium
oppose opposed optical optimal optimum opus oral orange oration orb orbit orbital orchard ordain ordeal order ordered
orderly ore organ organic orgy orient orifice origin ornery osseous other ounce oust out outcast outcome outcry outdo
outdoor outer outface outfit outgrow outlaw outlet outline outlive outlook outpost output outrage outrun outset
outside outward oval over overall overlap overrun owe owl own owner oxen oxygen oyabun ozone pace pacific pacify
pacing pack package packet packing pad padlock paean page paid pail pain painful pains paint painted painter pair
palace pale palette pallid pallor palm pan pane panel panic pansy pant panther panting pants papa paper papers par
parable parade paradox parcel pardner pardon parent parish park parked parking parlor parody parrot parson part
partial parting partly partner parts party pass passage passing passion passive past paste pasted pastel pastor
pasture pasty patch patent path pathway patient patriot patrol patron patter pattern pause paved paw pay payable
payday payment pea peace peacock peak peaked pear pearl peasant pebble peck pecs peddle peddler peek peel peer pelt
pelvic pen penalty penance pencil pending pennant penny pension peony people pepper percent perch perfect perform
perfume perhaps period perish perky permit persist person pertain pervade pester pet petal phalanx phantom phase phone
phoneme phony photo phrase physics pianist piano pick picket pickup picnic picture pie piece pierce pig pigeon pigment
pile pilfer pill pillow pilot pimp pin pinch pinched pine pink pioneer pipe pirate pistol pit pitch pitched pitcher
piteous pity place placid plague plain plainly plan planar plane planet plank planned planner plant planter plaque
plasma plaster plastic plate platoon play player playing plead please pleased pledge plenty pleura pleural plight plod
plot plow plowing pluck plug plum plumb plumber plump plunder plunge plunk poach pocket poem poet poetic poetry point
pointed poise poised poison poke polar pole police policy polish polite poll pollen polls pompous poncho pond ponder
pony pool poor poorly pop pope popping poppy popular porch pore pork porous port portal porter portion portray pose
posse possess possum post posture postwar pot potato potency potent pothole potter pottery poultry pounce pound pour
poverty powder powdery power powered prairie praise prance pray prayer preach precede precise predict preface prefer
premium premix prepare present preside press presto presume pretend pretty prevail prevent prewar prey price pricing
prick pride priest primary prime print prior prison privacy private privy prize pro probe problem proceed process
procure prod produce product profess proffer profile profit profits program project prolong promise promote prompt
prone pronoun proof prop propel proper prophet propose prose prosper protect protein protest proud proudly prove
proverb provide provoke prowess prowl pry pseudo psyche public publish pucker puff pull pulley pulp pulpit pulse pump
punch puncher punish pupate pupil puppy pure purely purify purity purl purple purport purpose purse pursue pursued
pursuer pursuit push pushing pushup pussy put putt puzzle puzzled python quack quaint quake qualify quality quantum
quarrel quart quarter queen queer quell query quick quicken quickly quiet quietly quill quirk quirt quit quite quiver
quiz quote rabbi rabbit race racial rack racket radar radial radiant radiate radical radio radish radius raft rag rage
ragged raid rail railing railway rain rainbow raise raised raising rake rally ram ramble ramp rampart ramrod ranch
rancher random range ranging rank ransack ransom rap rape rapid rapidly rapture rare rarely rat rate rather ratify
rating ratio ration rattle rattler raucous raw razor reach react read reader readily reading ready reagent real
realism reality realize really realm reap rear rearing reason rebel rebuff rebuild rebuke rebut recall recede receipt
receive recent recess recital recite reckon reclaim recoil record recount recover recruit recur red redcoat reddish
redeem redress reduce reduced reek reel reelect reenact refer refine refined reflect reflex reform refrain refuel
refugee refund refusal refuse refute regain regard regime region regret regular reign rein reissue reject rejoice
rejoin relate related relax relaxed relay release relent relic relief relieve relish reload remain remake remand
remark remedy remind remnant remodel remote removal remove removed rename rend render rending renew renewal rent
reopen repair repay repeal repeat repel repent replace reply report repose repress reprint repulse repute request
require reread rescind rescue resent reserve reside residue resign resist resolve resort respect respite respond rest
restate restive restore result resume retail retain rethink retinal retire retired retort retrace retract retreat
return reunion reunite revamp reveal revel revenge revenue revere reverie reverse revert review revise revised revive
revolt revolve reward rewrite rhino rhubarb rhyme rhythm rib ribbon rice rich rid riddle ride rider ridge rifle rig
rigger right rightly rigid rigidly rigor rim ring ringing rinse riotous rip ripe ripen ripple rise rising risk rite
ritual rival river rivet road roadway roam roar roaring roast rob robber robbery robe rock rocket rocky rod rodeo
roiling role roll rolling roman romance romp roof rooftop rookie room rooms rooster root rooting rope rose roster rosy
rot rotate rotor rough roughly round rounded roundup rouse route routine rove row rowdy royal royalty rpm rub rubber
rude ruffle ruffled rug rugged ruin rule ruler ruling rumble rummage rumor run runaway runner running runoff rural
rush rushing rust rustic rustle rustler rusty rut sable sack sacred sad saddle sadism sadly sadness safe safely safety
sag saga sage sail sailing sailor saint sake salary sale salient saline saliva salon saloon salt salty salute salvage
salve salvo same sample sand sandal sandy sane sap sarcasm sardine sash satire satisfy savage save saving savings
savor say scale scamper scan scandal scant scar scarce scare scared scarf scarred scatter scene scenery scenic scent
scented scheme scholar school science scoff scold scoot scope score scores scorn scour scours scout scowl scrap scrape
scratch scrawny scream screech screen screw scribe script scrub scuffle scurry scuttle sea seal seam seaman sear
search season seat seated sec secede second secrecy secret section sector secular secure sedan see seed seedbed seek
seem seep segment seize seizure seldom select self selfish sell selling semi senate senator send sending senior sense
sensing sensor sensory sept septic septum serene series serious sermon serpent serum servant serve service session set
setback setting settle settled settler setup seven seventh sever severe sew sewage sewer sex sexual shabby shackle
shade shaded shading shadow shaft shake shaken shaking shallow sham shamble shame shape shaped share shared sharp
sharpen sharply shatter shave shaved shaving shawl shear sheath shed sheep sheer sheet shelf shell shelter sheriff
sherry shield shift shimmy shin shine shining shiny ship shirk shirt shit shiver shock shod shoe shoot shop shore
short shorten shortly shot shotgun shout shove shovel show shower showing showy shred shrewd shriek shrill shrilly
shrink shrub shrug shudder shuffle shun shunt shut shutter shuttle shy sic sick sicken side sidle siege sift sigh
sight sign signal signed signify silence silent silk sill silly silo silver silvery similar simmer simple simply sin
sincere sinewy sinful sing singer singing single sink sinking sinner sip sir sire sister sit site sitting situate six
sixteen sixth sixties sixty sizable size sized skeptic sketch skid skiff skill skilled skim skin skinny skip skirt
skull sky slab slack slacken slacks slam slant slap slash slashed slat slate slave slavery sleep sleepy sleeve slender
slice slick slicker slide slight slim sling slink slip slipper slit slob sloe slop slope sloping sloppy slot slow
slowing slowly sludge slug slugger sluice slum slumber slump smack small smaller smart smash smell smile smiling smite
smitten smoke smolder smooth smother smug smuggle snag snail snake snap snare snarl snatch sneak sneaker sneer snicker
sniff sniper snore snoring snort snow snub snuggle snugly soak soaked soaking soap soar soaring sob sober soberly
social society sock sod sodden sofa soft soften softly soil soiled solace solar solder soldier sole solely solemn
solicit solid solidly soloist solve somatic somber some someday somehow someone son sonar song sonny soon sooner
soothe soprano sorb sorbed sordid sore sorely sorrow sorry sort soul sound soup sour source south soviet sow space
spaced spacing spade span spare spark sparkle sparse spatial spatter speak speaker spear special species specify speck
specter speech speed speedy spell spend sphere spice spike spill spin spine spiral spire spirit spit splash spleen
split spoil spoiled spoke spoken sponge spongy sponsor spore sport spot spouse spout sprawl spray spread spree spring
sprout spur spurn sputnik sputter spy squad squall square squared squat squawk squeak squeal squeeze squint squire
squirm stable stack stadium staff stage stagger stain stained stairs stake stalk stall stammer stamp stand star stare
start startle starve state static station statue stature status statute staunch stay stead steady steak steal steam
steel steep steeple steer stem step steps stereo stern steroid stick sticky stiff stiffen stiffly stifle still sting
stink stir stirrup stitch stock stoic stolid stomach stomp stone stool stoop stooped stop storage store storm stormy
story stout stoutly stove stow strain strait strand strange strap stratum straw stray streak stream street stress
stretch strew strict stride strife strike string strip strive stroke stroll strong strop strum strut stucco stud
student studio study stuff stuffy stumble stump stun stung stunned stunt stupid stupor sturdy stutter style suave
subdue subdued subject sublime submit subside subtend subtle suburb subway succeed success succor succumb such suck
sudden suds sue suffer suffice suffix suffuse sugar suggest suicide suit suite suited sulkily sulky sullen sultry sum
summary summer summon sun sundown sunken sunny sunray super superb supper supply support suppose supra supreme sure
surely surface surge surgeon surmise surpass surplus survey survive suspect suspend sustain swagger swallow swamp swan
sward swarm swatch sway swear sweat sweep sweet swell swerve swift swiftly swim swindle swing swirl swish switch
swivel swollen swoop sword symbol symptom synonym syntax system table tableau tack tackle tact tactic tactics tactile
tactual taffy tag tail tailor take tale talent talk tall tally tame tan tangent tangle tangled tango tank tap tape
tapered tapping target tariff task taste taunt taut tavern tax taxi tea teacart teach teacher team tear tears tease
teat tedious teen teenage teens teeter tell temper temple tempo tempt ten tenancy tenant tend tender tendon tenor
tense tensely tension tent tenth tenure term terms terrace terrain terrier terror test tested testify testing text
textile texture thank thanks thaw theater theatre theme then thence theorem theory therapy there thereby therein
thereof thereto thermal thesis thick thicken thicket thickly thief thigh thin thing things think third thirst thirty
thither though thought thrash thread threat three thrifty thrill thrive throat throb throng through throw thrust thud
thumb thump thunder thus thwart thyroid tick ticket tide tidings tie tied tiger tight tighten tightly tilt tilted
timber timbre time timely times timid timidly timing tin tine tingle tinkle tint tiny tip tiptoe tire tired tissue tit
titer title titled titter toad toast tobacco today toe toil toilet token toll tomato tomb ton tonal tone tongue
tonight tons too tool tooth top topic topical topple torch torment torn torrent torso torture toss total totally
totter touch touched tough tour tourist tousled towel tower town toxic toy trace trachea tracing track tract tractor
trade trader trading traffic tragedy tragic trail train trained trait traitor tramp trample trance transit trap
trapper travel tray tread treason treat treated treaty tree treetop tremble tremor trench trend trial tribal tribute
trick trigger trill trim trio trip triple triumph trivial troop trooper troops trot trouble trough troupe trouser
truck trudge true truly trumpet trundle trunk trust trustee truth try trying tsunami tub tube tubing tuck tug tuition
tumble tumbler tumor tumult tune tuning tunnel turban turbine turkey turmoil turn turned turning tutor tweed twelfth
twelve twenty twice twig twin twine twinge twirl twirler twist twisted twitch two twofold type typhus typical typify
typing tyranny ugly ulcer unable unaided unasked unaware uncanny uncle unclean uncover under undergo undo undress
undue unearth uneasy uneven unfair unfold ungodly unhappy unhitch unholy unified uniform unify union unique unit unite
united unity unknown unleash unlike unlined unload unlock unmoved unpaid unscrew unseen unsung untie unusual unwire
unwise update upgrade uphold upkeep upper upright uproar upset uptake uptown upward upwards urban urge urgency urgent
urging usable usage use used useful useless user usher usual usually usurp utensil utility utilize utmost utopia
utopian utter utterly vacancy vacant vacate vacuum vague vaguely vain valet valiant valid valley valor value valued
values valve vanish vanity vapor variant varied variety various vary varying vase vast vastly vector veer vehicle veil
veiled vein velvet velvety vendor vent venture veranda verb verbal verbena verge verify verse version vertex verve
very vessel vest veteran veto vibrant vibrate vice vicious victim victory video vie view vile village villain vine
violate violent violet violin virgin virile virtue virus visage visible visibly vision visit visitor visual vital
vitally vitals vitamin vivid vividly vivify vocal vogue voice volley voltage voltaic volume vote voter voting vow
vowel voyage vulgar vulture wade wag wage wages wagon wail waist wait waiter waiting wake wakeful walk wall wallet
wallop wallow wander wane want war ward warfare warily warlike warm warmth warn warning warp warrant warrior wary wash
washed washing waste wasted watch water watery watt wattle wave waver waving wavy wax way ways wayward weak weaken
weakly wealth wealthy weapon wear wearily weary weather weave web wed wedding wedge wee weed week weekend weekly weep
weeping weigh weight weir weird welcome weld welfare well welter wend west western wet whack wheel wheeze while whine
whinny whip whir whirl whiskey whisky whisper whistle white whiz whole wholly whoop whore why wicked wicker wide
widely widen widow widowed width wield wife wiggle wild wildcat wildly will willing willow win wince wind winding
window windy wine wing wingman wings wink winless winner winning winter wipe wire wiry wisdom wise wisely wish wit
witch within witness witty wizard wobble woe woeful woman wonder woo wood wooden woods wool woolen woolly word words
work worker working workman workout works world worm worn worried worry worse worship worst worth worthy wound wounded
wrack wrangle wrap wrapped wrath wreath wreck wrench wrestle wretch wriggle wring wrinkle wrist writ write writer
writhe writing written wrong wrongly wryly xylem yank yard yardage yawn year yearly yearn years yell yelling yellow
yelp yes yet yield yokel young younger youth zeal zero zigzag zinc zoo zoom
"""
"""Common words that are written small, of three to seven letters."""

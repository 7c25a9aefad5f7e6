"""Who governed small lands apart from the country around them: islands, valleys, zones, from 1815 on.

The rows are explained in `governed`. They are asked first for a place or a first-level area, and never for a country as
a whole. The acts named as sources, the years and the edges are from memory.
"""

from boxlore.core.places.governed_land import Land

_YUGOSLAVIA_FROM_HUNGARY = (
    "1815 Austrian Empire; 1867 Austria-Hungary; 1919 Kingdom of Serbs, Croats and Slovenes (Yugoslavia); "
    "1929 Yugoslavia; 1941 -; 1945 Yugoslavia; 1992 Federal Republic of Yugoslavia; 2003 Serbia and Montenegro; "
    "2006 -; 2007 *"
)

GOVERNED_SMALL: tuple[Land, ...] = (
    Land(
        "RS",
        _YUGOSLAVIA_FROM_HUNGARY,
        "Treaty of Trianon 1920 (Zemun and the Banat bank of the Danube, today in Belgrade)",
        areas=("SE",),
        boxes=((44.8, 20.05, 44.95, 20.435), (44.76, 20.05, 44.8, 20.33), (44.838, 20.435, 45.05, 20.7)),
    ),
    Land(
        "FI",
        "1809 Grand Duchy of Finland (Russian Empire); 1918 *; 1940 Soviet Union (leased territory); 1942 *",
        "Moscow Peace Treaty 1940 (Hanko)",
        boxes=((59.75, 22.75, 59.9, 23.15),),
    ),
    Land(
        "HR",
        "1815 Austrian Empire; 1867 Austria-Hungary; 1918 -; 1921 Kingdom of Italy; 1943 -; 1948 Yugoslavia; 1992 *",
        "Treaty of Rapallo 1920; Treaty of Paris 1947 (Lastovo)",
        boxes=((42.7, 16.7, 42.8, 17.0),),
    ),
    Land(
        "IT",
        "1815 Austrian Empire; 1867 Austria-Hungary; 1919 -; 1921 Kingdom of Italy; 1944 -; 1946 *",
        "Treaty of Saint-Germain 1919 (Cortina and Livinallongo in Tyrol)",
        areas=("20",),
        boxes=((46.5, 12.05, 46.63, 12.22), (46.47, 11.85, 46.53, 12.0)),
    ),
    Land(
        "GR",
        "1815 Ottoman Empire; 1832 -; 1835 Principality of Samos (Ottoman Empire); 1912 -; 1914 *; 1941 -; 1945 *",
        "protocol of 1832; Treaty of London 1913 (Samos)",
        boxes=((37.6, 26.5, 37.85, 27.1),),
    ),
    Land(
        "FR",
        "1815 Monaco; 1848 -; 1861 *; 1942 -; 1945 *",
        "treaty of 2 February 1861 (Menton and Roquebrune)",
        areas=("93.06",),
        boxes=((43.74, 7.44, 43.83, 7.54),),
    ),
    Land(
        "CH",
        "1815 Principality of Neuchâtel (Switzerland, under the King of Prussia); 1848 *",
        "Congress of Vienna 1815; Treaty of Paris 1857",
        areas=("NE",),
    ),
    Land(
        "HN",
        "1815 -; 1853 Bay Islands (British colony); 1860 -; 1862 *",
        "proclamation of 1852; Wyke-Cruz Treaty 1859",
        areas=("11",),
    ),
    Land(
        "KE",
        "1815 -; 1895 Uganda Protectorate (British); 1902 -; 1903 East Africa Protectorate (British); 1920 -; "
        "1921 Kenya Colony (British); 1963 -; 1964 *",
        "transfer of 1 April 1902 (Nyanza and Naivasha)",
        boxes=((-1.3, 33.8, 1.3, 36.0),),
    ),
    Land(
        "ZA",
        "1815 -; 1885 Orange Free State; 1900 -; 1901 Orange River Colony (British); 1910 Union of South Africa; "
        "1961 South Africa",
        "annexation of 1884 (Thaba Nchu)",
        areas=("03",),
        boxes=((-29.35, 26.65, -29.0, 27.05),),
    ),
    Land(
        "ZA",
        "1815 -; 1863 Griqualand East; 1874 -; 1880 Cape Colony; 1910 Union of South Africa; 1961 South Africa",
        "Griqualand East Annexation Act 1877, in force 1879 (Kokstad)",
        boxes=((-30.8, 28.6, -30.2, 29.7),),
    ),
    Land("AF", "1815 -; 1864 *", "conquest of 1863 (Herat)", areas=("11",)),
    Land(
        "NI",
        "1815 -; 1845 Mosquito Coast (British protectorate); 1860 -; 1861 Mosquito Reserve (Nicaragua); 1894 -; 1895 *",
        "Treaty of Managua 1860 (Bluefields)",
        boxes=((11.4, -84.2, 12.8, -82.5),),
    ),
    Land(
        "PA",
        "1815 Spain; 1821 -; 1822 Gran Colombia; 1830 -; 1832 New Granada; 1861 -; 1864 Colombia; 1903 -; "
        "1905 Panama Canal Zone (United States); 1979 -; 2000 *",
        "Hay-Bunau-Varilla Treaty 1903; treaties of 1977 (Balboa, Gamboa, Gatún)",
        boxes=((8.93, -79.6, 8.968, -79.548), (8.98, -79.72, 9.15, -79.58), (9.24, -79.96, 9.3, -79.88)),
    ),
    Land(
        "CO",
        "1815 -; 1868 Peru; 1930 -; 1935 *",
        "Salomón-Lozano treaty 1922, in force 1930; protocol of Rio 1934 (Leticia)",
        boxes=((-4.3, -70.1, -3.7, -69.8),),
    ),
    Land(
        "MY",
        "1815 Brunei; 1847 Labuan (British colony); 1890 -; 1946 British North Borneo; 1963 -; 1964 *",
        "cession of 1846",
        areas=("15",),
    ),
    Land(
        "SN",
        "1815 Portuguese Guinea; 1886 -; 1895 French West Africa; 1959 -; 1961 *",
        "convention of 12 May 1886 (Ziguinchor)",
        boxes=((12.5, -16.35, 12.65, -16.2),),
    ),
)

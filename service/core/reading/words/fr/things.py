"""French: what stands on the stern, how it moves, where it is, whether it goes."""

WORDS = {
    "O_LADDER": (
        "échelle|échelle de bain|échelles|échelle arrière|échelle de baignade|échelle de plongée|"
        "échelle de coupée|échelle inox|échelle de secours|échelle de tableau|échelle de bains"
    ),
    "O_PLATFORM": (
        "plateforme|plage de bain|plateforme de bain|plateformes|plate forme|plateforme arrière|"
        "plateforme de baignade|plage arrière|plateformes de bain|plate forme de bain|plage arrière rapportée|"
        "caillebotis arrière|plateforme de plongée|plage de bain rabattable|plateforme teck|plate forme arrière|"
        "plate formes|plateau de bain|plage de baignade"
    ),
    "O_DAVITS": (
        "bossoirs|bossoir|portemanteaux|portemanteau|bossoirs d'annexe|potences|bossoirs arrière|"
        "bossoirs de tableau|potence d'annexe|porte annexe|portemanteaux arrière|bossoirs fixes|grue d'annexe|"
        "daviers d'annexe|davits"
    ),
    "O_OUTBOARD": (
        "hors bord|moteur hors bord|support de hors bord|chaise de hors bord|chaise moteur|chaise pour hors bord|"
        "moteur annexe sur chaise|hors bords|support moteur|moteur hors bord de secours|hors bord électrique|"
        "support de moteur|support hors bord|console moteur|platine moteur|support du hors bord|"
        "chaise moteur relevable|petit hors bord|chaise de moteur"
    ),
    "O_EXHAUST": (
        "échappement|sortie d'échappement|l'échappement|échappement moteur|sorties d'échappement|"
        "pot d'échappement|tuyau d'échappement|échappement humide|échappements|sortie de l'échappement|"
        "passe coque d'échappement"
    ),
    "O_RAIL": (
        "balcon arrière|balcon|balcons arrière|balcons|filières arrière|rambarde|balcon de poupe|"
        "balcon arrière en deux parties|balcons ouverts|chandeliers arrière|rambardes|balcon ouvrant|"
        "balcon en deux parties|blackon arrière"
    ),
    "O_STAY": (
        "pataras|patte d'oie|bastaques|double pataras|étai arrière|pataras double|pataras dédoublé|"
        "pataras en patte d'oie|cadène de pataras|cadènes de pataras|bastaque|ridoir de pataras|"
        "double étai arrière|pataras fendu|deux pataras|pataras unique|haubans arrière|vérin de pataras|"
        "palan de pataras"
    ),
    "O_BOOM": (
        "bôme d'artimon|bôme|bout de bôme|queue de malet|bôme de grand voile|bout de la bôme|tape cul|bôme de tapecul"
    ),
    "O_ARCH": (
        "portique|arceau|arche|portiques|portique arrière|arceau arrière|roll bar|portique inox|portique solaire|"
        "portique en inox|arceau inox|arceaux|portiques inox|arche inox|portique alu|roll bars|potence arrière|"
        "targa|portique de poupe"
    ),
    "O_PANELS": (
        "panneaux solaires|panneau solaire|panneaux|solaires|panneaux photovoltaïques|photovoltaïque|panneau|"
        "panneau photovoltaïque|photovoltaïques|panneau solaires|pv|panneaux solaire"
    ),
    "O_MAST": (
        "mât radar|éolienne|mât d'éolienne|mâtereau|mât arrière|perche radar|mât d'antenne|éoliennes|"
        "aérogénérateur|mât de radar|mât d'éoliennes|perche d'antenne|mât porte antenne|pied d'éolienne|"
        "support d'éolienne|générateur éolien|antenne gps|tube d'antenne|perche gps|antenne vhf|mât gps|"
        "antenne ais|champignon gps"
    ),
    "O_PASSERELLE": (
        "passerelle|passerelles|planche de coupée|passerelle arrière|passerelle de coupée|coupée|"
        "passavant arrière|passerelle d'embarquement"
    ),
    "O_BOOMKIN": (
        "queue de mallet|bout dehors arrière|queue de malet|bout dehors d'artimon|boute hors arrière|"
        "tangon arrière|bout hors arrière|bouthors arrière|queue-de-malet|bout dehors"
    ),
    "O_STAFF": (
        "hampe|mât de pavillon|hampe de pavillon|porte pavillon|mâtereau de pavillon|hampe du pavillon|"
        "support de pavillon|mât du pavillon|hampes|hampe de drapeau"
    ),
    "O_OTHER": "barbecue|bbq|grill|plancha|porte cannes|ancre arrière|ancre de poupe|davier arrière",
    "O_LOCKER": (
        "coffre arrière|bib|radeau|coffre à gaz|radeau de survie|coffre à bouteilles de gaz|berceau de radeau|"
        "support de radeau|coffre de tableau"
    ),
    "EMPTY": "à vide|lège|bateau vide|sans chargement|non chargé|non chargée",
    "LADEN": (
        "en charge|chargé|chargée|pleine charge|à pleine charge|prêt au départ|sous ses lignes|"
        "plus bas que ses lignes|en dessous de ses lignes|plus enfoncé que sur le plan"
    ),
    "SINKS": (
        "s'enfonce de|s'enfonce|plus bas|plus enfoncé|plus enfoncée|descend de|plus bas sur l'eau|de moins|"
        "sous ses lignes|plus bas que ses lignes|en dessous de ses lignes|plus enfoncé que sur le plan"
    ),
    "CAMBER": "bombé|flèche|bombement|galbe|cintrage|cintré",
    "FOLD": (
        "à replier|à rabattre|se rabattant|pivotante|repliable|rabattable|pliante|relevable|basculante|"
        "repliables|pliable|se replie|qui se replie|rabattables|se rabat|se relève|relevables|qui bascule|"
        "articulée|escamotable|pliant|rétractable|basculant|se plie|repliant|repliante|rabattant|rabattante|"
        "rabattus|se replient|se rabattent|qui se rabat|qui se relève|qui se plie|se bascule|se relèvent|repliée|"
        "articulé|articulés|articulées|escamotables|pliables|pliantes|pliants|basculants|basculantes|"
        "sur charnières|à charnières|peut se replier|peut être relevée|peut être rabattue|peut être repliée|"
        "peut se relever|rabattre|replier|rabattue|rabattu|rabattues|se remonte|qui remonte|on la relève|"
        "on la replie|on la rabat|à bascule|plage de bain rabattable|chaise moteur relevable"
    ),
    "FIXED": (
        "fixe|soudé|soudée|boulonnée|fixes|boulonné|rigide|vissée|non repliable|à poste|à demeure|soudées|soudés|"
        "rigides|non pliante|non rabattable|à poste fixe|inamovible|vissé|vissés|boulonnés|boulonnées|"
        "ne se replie pas|ne se rabat pas|ne se relève pas|ne se plie pas|non escamotable|non relevable|"
        "non repliables|d'une pièce|fixée au tableau|fixes soudés|bossoirs fixes"
    ),
    "REMOVE": (
        "pourrais déposer|pourrions déposer|peux déposer|pouvons déposer|pourrais enlever|pourrais démonter|"
        "pourrions enlever|pourrions démonter|peut être déplacé|peut être déplacée|peut aller ailleurs|"
        "peuvent être déplacés|sera démonté|seront démontés|sera démontée|seront démontées|sera enlevé|"
        "sera enlevée|démontable|amovible|peut être enlevée|peut être démontée|peut être enlevé|démontables|"
        "amovibles|peut être retirée|peut être retiré|peut se démonter|peut s'enlever|peut partir|"
        "qu'on peut enlever|on peut l'enlever|peut être supprimée|peut être supprimé|que je peux démonter|"
        "peut disparaître|peut être déposée|peut être déposé|peut être démonté|peuvent être démontés|"
        "peut être ôté|superflu|superflue|pas indispensable|pas indispensables|inutile|inutiles|plus besoin|"
        "pas besoin|dispensable|on peut s'en passer|déboulonnable|décrochable|à vendre|partira|partiront|"
        "va partir|vont partir|s'enlève|s'enlèvent|se démonte|se démontent|se retire|se dépose|facultatif|"
        "facultative|déplaçable|déplaçables|peut sauter|peuvent sauter|peuvent partir|qui peut partir|"
        "peut s'ôter|ne tenons pas|ne tiens pas|n'y tiens pas|n'y tenons pas|s'ôte|peut aller dans le coffre|"
        "peut rester à terre|se retirent|il suffit de l'ôter|n'ai plus besoin|n'avons plus besoin|"
        "on n'en a plus besoin"
    ),
    "KEEP": (
        "nous y tenons|j'y tiens|on y est attachés|nous y sommes attachés|on ne veut pas s'en séparer|"
        "pas question d'y toucher|on l'aime bien|y tient|y tenons|y tiens|tient à le garder|tient à la garder|"
        "tenons à le garder|continuer à utiliser|continuer à s'en servir|reste utilisable|ne voulons pas enlever|"
        "ne veux pas enlever|ne souhaitons pas enlever|ne voulons pas démonter|que je garde|je garde|doit rester|"
        "à garder|je la garde|je le garde|souhaitons garder|souhaite garder|à conserver|conserver|garder|"
        "doivent rester|indispensable|nous gardons|veux garder|voulons garder|doit être conservé|"
        "doit être conservée|reste en place|restera|on la garde|on le garde|je tiens à|ne peut pas être démonté|"
        "impossible à déplacer|à conserver impérativement|qui doit rester|reste là|restent|restera en place|"
        "resteront|laisser en place|garde absolument|gardons|gardée|gardé|gardés|conservons|conservé|conservée|"
        "conservés|maintenir|maintenu|maintenue|préserver|intouchable|sacré|sacrée|non négociable|pas négociable|"
        "pas question d'enlever|pas question de démonter|hors de question|indispensables|"
        "utilisons tous les jours|doit absolument rester|rester en place|pas touche|on ne touche pas|"
        "ne peut pas bouger|ne bouge pas|ne bougera pas|s'en séparer|ne se séparera pas|ne nous séparerons pas|"
        "on ne se séparera pas|ne me séparerai pas|pas séparer|elle y tient|il y tient|ils y tiennent|"
        "madame y tient|on en a besoin|nous en avons besoin|j'en ai besoin|elle nous est indispensable|"
        "il nous est indispensable|on garde|je conserve|nous conservons|on conserve|à maintenir"
    ),
    "PORT": (
        "bâbord|à bâbord|bd|gauche|côté bâbord|sur bâbord|à gauche|du côté bâbord|bord bâbord|bâbord arrière|"
        "à babord|côté gauche|sur la gauche|coté babord|sur la hanche bâbord|coin bâbord|hanche bâbord|"
        "quart bâbord|babordais|partie bâbord|sur bd|à bd|bbd|du côté gauche"
    ),
    "STARBOARD": (
        "tribord|à tribord|td|droite|côté tribord|sur tribord|à droite|du côté tribord|bord tribord|"
        "tribord arrière|côté droit|sur la droite|coté tribord|sur la hanche tribord|coin tribord|hanche tribord|"
        "quart tribord|partie tribord|sur td|à td|tbd|du côté droit"
    ),
    "CENTRE": (
        "milieu|au milieu|centre|axe|au centre|dans l'axe|sur l'axe|central|centrale|l'axe|axial|ligne médiane|"
        "centrée|plein milieu|du milieu|de l'axe du bateau|depuis l'axe|à partir de l'axe|hors axe|désaxé|"
        "désaxée|de l'axe central|de la ligne médiane|axe longitudinal|en plein centre|au centre du tableau|"
        "en plein milieu|axe du bateau|du centre|par rapport à l'axe|dans l'axe du bateau|au beau milieu|"
        "ligne de foi|au plein centre|de la médiane|plan longitudinal|de l'axe"
    ),
    "EACH_SIDE": (
        "de chaque côté|des deux côtés|de part et d'autre|sur chaque bord|un de chaque côté|un sur chaque bord|"
        "à bâbord et à tribord|bâbord et tribord|sur les deux bords|des deux bords|un par bord|"
        "à droite et à gauche|chaque bord|de chaque bord|un à chaque bord|sur les deux côtés|tribord et bâbord|"
        "de chaque côté de l'axe|de chaque bord de l'axe|de part et d'autre de l'axe"
    ),
    "PREFER": (
        "souhaite un montage|souhaite le montage|souhaite l'installer|souhaite le monter|montage souhaité|"
        "préférerait|souhaiterait|on préfère|on préférerait|on aimerait|préfère|préférons|préférerais|aimerais|"
        "aimerions|souhaiterais|souhaiterions|préférence|préférerions|plutôt|voudrais l'avoir|l'idéal serait|"
        "si possible|préféreraient|aimerait mieux|aimeraient|souhaiteraient|de préférence|nous voudrions|"
        "je voudrais|nous voulons|on voudrait|je veux|nous aimerions|nous conviendrait le mieux|"
        "me conviendrait le mieux|m'arrangerait|nous arrangerait|tient à un montage|tiennent à un montage|"
        "veut un montage|la veut|le veut|la voudrait|le voudrait|la voudrais|le voudrais|la voulons|le voulons|"
        "la veux|le veux|m'arrange mieux|mieux pour nous|mieux pour moi|si c'est possible|dans l'idéal|"
        "autant que possible"
    ),
    "SLIDE": (
        "coulissante|coulissant|télescopique|coulissantes|coulissants|télescopiques|à coulisse|qui coulisse|"
        "se tire|qui sort d'un|se glisse|glissière|comme un tiroir|en tiroir|coulisse|coulissent"
    ),
    "SWING": (
        "pivotante|pivotant|orientable|pivotantes|pivotants|orientables|pivote|qui pivote|pivotent|balaie|balaye|"
        "balayer|se balade"
    ),
    "AVOID": "éviter|surtout pas|en aucun cas",
    "GONE": (
        "sont partis|sont parties|ont été vendus|a été vendu|"
        "déjà partis|déjà parti|déjà partie|déjà parties|plus à bord|ne sont plus là|n'est plus là|déjà vendu|"
        "déjà vendus|déjà vendue|déjà vendues|déjà démonté|déjà démontés|déjà démontée|déjà démontées|"
        "déjà enlevé|déjà enlevés|déjà enlevée|déjà enlevées|déjà déposé|déjà déposés|avons vendu|est démonté|"
        "est démontée|dans le coffre|dans un coffre|rangé|rangée|reste à terre|est rangé|est rangée|stocké|"
        "stockée|a été démontée|a été démonté|a été enlevée|a été enlevé|je l'ai enlevée|je l'ai enlevé|"
        "nous l'avons enlevée|nous l'avons enlevé|ont été démontés|ont été enlevés|je l'ai démontée|"
        "n'existe plus|n'existent plus|n'y est plus|n'y sont plus|n'est plus|ne sont plus|plus là|n'avons plus|"
        "n'ai plus|il n'y a plus|a disparu|ont disparu|disparu|disparue|au garage|à la maison|à terre|au grenier|"
        "sous le pont|dans la baille|dans la soute|dans la cabine|stockés|rangés|rangées|"
        "du précédent propriétaire|c'est du passé|fait partie du passé|passé par dessus bord|n'y a plus|n'a plus|"
        "n'en avons plus|n'en ai plus|donnés à|donné à|partis chez|parti chez|pas encore posé|pas encore montée|"
        "pas encore monté|en commande"
    ),
    "BESIDE": "à côté de|près de|près du|à côté du|au niveau de|au niveau du|à hauteur de|au droit de",
    "BEGIN": "commence|débute|à partir de|démarre|part de|commence à",
    "EXCEPT": "sauf|à part|hormis|excepté|seulement",
    "OFF": (
        "enlever|ôter|démonter|déposer|retirer|supprimer|déboulonner|dévisser|déplacer|vendre|sacrifier|"
        "débarrasser|éliminer|l'enlever|enlèverai|enlèverons|démonterai|démonterons|déposerons|retirerons|"
        "supprimerons|vendons|vends|enlève|enlevons|démonte|démontons|retire|retirons|passer de|passer du|"
        "passer d|passer des|me passer|nous passer|se passer|m'en passer|nous en passer|s'en passer|se séparer|"
        "nous séparer|me séparer|renoncer|faire sans|bouger|perdre|la perdre|le perdre"
    ),
    "OFFED": (
        "enlevé|enlevée|enlevés|enlevées|ôté|ôtée|ôtés|démonté|démontée|démontés|démontées|déposé|déposée|"
        "déposés|déposées|retiré|retirée|retirés|supprimé|supprimée|supprimés|déboulonné|déboulonnée|dévissé|"
        "vendu|vendue|vendus|vendues|débarrassés|ont enlevé|débarqué|débarquée|débarqués|débarquées|donné|donnés|"
        "donnée|jeté|jetée|jetés|cédé|cédée|cédés|revendu|revendus|revendue|découpé|découpée|arraché|arrachée|"
        "arrachés|scié|sciée|laissé à terre|laissée à terre|pourri|pourrie|rouillé|mis à la benne|liquidé|"
        "bazardé|bazardés|largué|largués"
    ),
    "V_TAKE": "",
    "MAY": (
        "peut|peuvent|pourrait|pourraient|pourrais|pourrions|pouvons|peux|sera|seront|serait|seraient|va|vont|"
        "vais|allons|veux|voulons|voudrais|prévu|prévoyons|compte|comptons|prêt|prêts|possible|facile|facilement|"
        "faudra|doit|doivent|devra|devrait|être|envisage|envisageons"
    ),
    "EASILY": (
        "sans problème|sans difficulté|sans problèmes|sans peine|pas de problème|aucun problème|sans souci|"
        "sans outil|pas de souci|sans regret|sans dommage|ne gêne pas|ne gênent pas"
    ),
    "SHIFTED": "déplacé|déplacée|déplacés|déplacées",
    "STAY": "rester|laisser|demeurer|maintenir en place",
    "DOWNWARD": (
        "on descend de|on descend|descendant|en descendant|vers le bas|sous le livet|en dessous du livet|"
        "descend de|de haut en bas"
    ),
    "EVEN": (
        "à l'aplomb|à l'aplomb du|à la verticale du|juste sous|exactement sous|pile sous|au droit du|aligné avec|"
        "aligné sur|dans le plan du|d'aplomb avec|à la verticale de|dans l'alignement du|affleure le|"
        "juste à l'aplomb"
    ),
    "TAKE_THIS": (
        "prenez celle là|prenez celui là|prenez ça|prenez cette valeur|c'est celle là qui compte|c'est celui là|"
        "prenez plutôt|retenez celle ci|partez sur"
    ),
    "LOATH": (
        "regretterions|regretterais|à regret|à contrecœur|dommage de|dommage d'|embêterait de|ennuierait de|répugne à"
    ),
    "DROP": (
        "différence de hauteur|dénivelé|hauteur entre|distance verticale|mesuré à la verticale|"
        "mesurés à la verticale|mesuré verticalement|mesurés verticalement|verticalement|hauteur verticale|"
        "d'un bord à l'autre|écart de hauteur|de dénivelé|entre le haut et le bas|"
        "du bord supérieur au bord inférieur|entre les deux bords"
    ),
    "AXIS": "axe|l'axe|son axe",
    "ZERO": "nulle|nul|zéro",
}

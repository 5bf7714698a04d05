"""French: whose boat, what is put right, what is asked, and leave taken."""

WORDS = {
    "YES": "oui",
    "NOT": (
        "pas de|pas|aucun|aucune|sans|ni|pas d'|n'a pas|n'y a pas|non|néant|nul|rien|jamais|n'ai pas|n'avons pas|"
        "il n'y a pas de|absence de"
    ),
    "OTHER_BOAT": (
        "avant nous avions|avant j'avais|auparavant nous avions|avant cela nous avions|avant on avait|"
        "la place de port fait|"
        "le sien|la sienne|le leur|la leur|voisin*|voisin|ami|ancien bateau|copain|voisins|voisine|un ami|"
        "copains|mon ami|précédent bateau|autre bateau|voisin de ponton|bateau précédent|ex bateau|un copain|"
        "mon frère|beau frère|collègue|du voisin|bateau voisin|d'à côté|bateau d'à côté|mon cousin|mon oncle|"
        "mon père|beau-frère|beau-père|un collègue|sister-ship|sistership|sister ship|un copain de ponton|"
        "copain de club|ancien voilier|précédent voilier|notre ancien bateau|mon ancien bateau|notre précédent|"
        "mon précédent|ancienne unité|l'autre bateau|d'un ami|d'un copain|d'un voisin|de mon ami|chez un ami|"
        "une amie|camarade|celui d'un|celui de mon|celui du voisin|mon voisin|bateau d'un ami|"
        "pas la nôtre|n'est pas la nôtre|pas le nôtre|n'est pas le nôtre|pas la mienne|n'est pas la mienne|"
        "pas le mien"
    ),
    "WITHDRAW": (
        "ne tenez pas compte|ne tenez plus compte|n'en tenez pas compte|oubliez les|à oublier|ne retenez pas|"
        "laissez tomber|oubliez|ne pas tenir compte|annule|erroné|erronée|était faux|faux"
    ),
    "MEANT": (
        "inversé les chiffres|inversé deux chiffres|interverti les chiffres|chiffres inversés|je voulais dire|"
        "voulais dire|au lieu de|correction|rectification|erreur|en fait|lire|plutôt que|il fallait lire|et non|"
        "corrigé"
    ),
    "OURS": (
        "frère et moi|ami et moi|copain et moi|beau frère et moi|le nôtre|notre|mon|nous avons|chez nous|le mien|"
        "sur le mien|sur le nôtre|j'ai un|nous avons un"
    ),
    "ASK": (
        "pouvez vous me dire|peut s'y monter|devis|quel|quelle|prix|combien|conseiller|besoin|question|savoir|"
        "conviendrait|convient|convenir|cherchons|cherche|proposez|proposer|recommandez|conseillez|merci de|"
        "chiffrer|tarif|tarifs|coût|coûte|renseignements|demande|souhaite savoir|adapter|adapté|voudrais savoir|"
        "pouvez|pourriez|vous avez|nécessaire|faut il|faut|quels|quelles|délai|intéressé|intéressés"
    ),
    "GEAR": (
        "régulateur|régulateur d'allure|pilote à vent|régulateurs|conservateur d'allure|pilote éolien|"
        "safran auxiliaire|régulateurs d'allure|régulateur d'allures|pilote d'allure|barre automatique à vent"
    ),
    "ORDER": (
        "pièce détachée|pièces détachées|commande|commander|numéro de série|pièces|pièce|rechange|"
        "pièces de rechange|bagues|bague|n° de série|commander des|remplacer|cassé|cassée|aérien neuf|usées|usé"
    ),
    "OWNED": "mon régulateur|notre régulateur|acheté chez vous|acheté en|monté depuis|installé depuis",
    "THANKS": (
        "vous remercier|te remercier|remerciements|remercier|arrivés à bon port|bien arrivée|contents|enchantés|satisfaits|"
        "merci beaucoup|bien reçu|un grand merci|mille mercis|bien arrivé|satisfait|ravis|remercie|remercions|"
        "bien arrivés"
    ),
    "SIGN_OFF": (
        "cordialement|merci d'avance|bien cordialement|salutations|bien à vous|merci|amicalement|"
        "sincères salutations|meilleures salutations|salutations distinguées|bien à toi|à bientôt|bonne journée|"
        "bonne réception|dans l'attente|en vous remerciant|merci par avance|avec mes remerciements|amitiés|cdlt|"
        "bonne navigation|salutations marines|avec mes salutations|respectueusement|d'avance merci|bises|bisous|"
        "grosses bises|bises du|la bise|bien amicalement|chaleureusement|au plaisir|vent arrière|bon vent|"
        "à vous lire|à très bientôt|bien cordiales salutations|cordialement vôtre|sincèrement|mille mercis|"
        "merci infiniment|grand merci|encore merci|merci à vous"
    ),
    "CUSTOMER": (
        "client|cliente|clients|un de nos clients|notre client|l'un de nos clients|propriétaire|"
        "pour le compte de|un client|armateur"
    ),
    "COMPANY": (
        "sarl|nautique|marine|accastillage|chantier naval|sas|chantier|shipchandler|voilerie|gréement|yachting|"
        "nautic|services nautiques|eurl|mécanique marine|plaisance|accastilleur|atelier|sellerie"
    ),
    "PHONE": "tél|tel|portable|mobile|téléphone|gsm|tph|tél portable|mob|t",
    "FAX": "fax|siret|rcs",
    "SELL": (
        "newsletter|désabonner|désinscrire|cliquez|exposants|remises|salon|tarif réduit|référencement|promotion|"
        "offre spéciale|ne plus recevoir|soldes"
    ),
    "INSTEAD": "au lieu de|au lieu des|plutôt que|et non",
    "OOPS": "non|pardon|enfin|plutôt|je veux dire|erreur|excusez moi|correction|mea culpa|je corrige",
}

package seams

import (
	"strconv"

	"ellwand/pieces/language"
)

// germanRoles are the words of roleWords in German.
var germanRoles = [roleCount]string{
	everyRole:          "alle Nähte",
	shoulderRole:       "Schulter",
	sideRole:           "Seite",
	waistRole:          "Taille",
	underarmRole:       "Unterarmnaht",
	wristRole:          "Handgelenk",
	centreFrontRole:    "vordere Mitte",
	centreBackRole:     "hintere Mitte",
	centreRole:         "Mitte",
	armholeRole:        "Armloch",
	sleeveHeadRole:     "Armkugel",
	neckRole:           "Hals",
	collarEdgeRole:     "Kragenkante",
	cuffEdgeRole:       "Manschettenkante",
	joinRole:           "Ansatznaht",
	facingEdgeRole:     "Belegkante",
	casingEdgeRole:     "Tunnelkante",
	rawEdgeRole:        "offene Kante",
	wristHemRole:       "Ärmelsaum",
	skirtHemRole:       "Rocksaum",
	trouserHemRole:     "Hosensaum",
	bodyHemRole:        "Saum unten",
	narrowHemRole:      "schmaler Saum",
	pocketHemRole:      "Taschensaum",
	yokeSeamRole:       "Passennaht",
	princessSeamRole:   "Prinzessnaht",
	lengthwiseSeamRole: "Längsnaht",
	crotchRole:         "Schrittnaht",
	insideLegRole:      "innere Beinnaht",
	outsideLegRole:     "äußere Beinnaht",
	edgeRole:           "Kante",
	endRole:            "Ende",
	topRole:            "oben",
	bottomRole:         "unten",
	leftRole:           "links",
	rightRole:          "rechts",
	bottomLeftRole:     "unten links",
	bottomRightRole:    "unten rechts",
	pointLeftRole:      "Spitze links",
	pointRightRole:     "Spitze rechts",
	cornerLevelRole:    "Ecke waagrecht",
	cornerUprightRole:  "Ecke senkrecht",
	hollowRole:         "Rundung",
	hemRole:            "Saum",
}

// germanSides are the words of sideWords in German, which follow those of the seam.
var germanSides = [sideCount]string{
	OnFront:      "vorn",
	OnBack:       "hinten",
	OnLeft:       "links",
	OnRight:      "rechts",
	OnUpper:      "oben",
	OnLower:      "unten",
	OnOuter:      "außen",
	OnSide:       "seitlich",
	OnOther:      "der anderen Seite",
	OnExtension:  "des Übertritts",
	OnFacing:     "des Belegs",
	OnFly:        "des Hosenschlitzes",
	OnVent:       "des Schlitzes",
	OnPocket:     "der Tasche",
	OnSlit:       "am Schlitz",
	OnButton:     "der Knöpfe",
	OnButtonhole: "der Knopflöcher",
	OnBuckle:     "der Schnalle",
	OnOverlap:    "der Überdeckung",
}

// germanExtents follow the words of the seam.
var germanExtents = [extentCount]string{mouth: ", Abnäheröffnung", dart: ", Abnäher"}

// In words the name in a language, and what people call something as they do.
func (n Name) In(l language.Language) string {
	if l != language.German {
		return n.String()
	}
	words := n.text
	if n.role != noRole {
		words = germanRoles[n.role]
	}
	if n.side != NoSide {
		words += " " + germanSides[n.side]
	}
	words += germanExtents[n.part]
	if n.order > 0 {
		words += " " + strconv.Itoa(n.order)
	}
	if n.image {
		words += ", gespiegelt"
	}
	return words
}

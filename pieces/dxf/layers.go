package dxf

import (
	"strconv"
	"strings"

	"ellwand/pieces/found"
	"ellwand/pieces/linework"
)

// layer is what a number of a layer means, by ASTM D6673 [source.D6673].
type layer int

// The layers.
const (
	boundaryLayer   layer = 1 // and the words of the style
	turnLayer       layer = 2 // corners of the boundary
	curveLayer      layer = 3 // points of its curves
	notchLayer      layer = 4 // V and slit
	gradeLayer      layer = 5 // grade reference lines
	mirrorLayer     layer = 6 // the fold
	grainLayer      layer = 7
	internalLayer   layer = 8
	stripeLayer     layer = 9
	plaidLayer      layer = 10
	cutoutLayer     layer = 11
	drillLayer      layer = 13
	sewLayer        layer = 14
	annotationLayer layer = 15
	tNotchLayer     layer = 80
	castleLayer     layer = 81
	checkLayer      layer = 82
	uNotchLayer     layer = 83
)

// neutralLayer takes the layer of what it is inserted by.
const neutralLayer = "0"

// numbered is the layer of a name; 0 where it is no number.
func numbered(name string) layer {
	n, err := strconv.Atoi(strings.TrimSpace(name))
	if err != nil {
		return 0
	}
	return layer(n)
}

var notchShapes = map[layer]found.NotchShape{notchLayer: found.PlainNotch, tNotchLayer: found.TNotch,
	castleLayer: found.CastleNotch, checkLayer: found.CheckNotch, uNotchLayer: found.UNotch}

var innerKinds = map[layer]found.InnerKind{internalLayer: found.InternalLine, stripeLayer: found.StripeLine,
	plaidLayer: found.PlaidLine, cutoutLayer: found.Cutout}

var errScale = &linework.Fault{Of: linework.BlockAmiss}

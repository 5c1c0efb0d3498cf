// Package subject names what a draft can be refused for: an option of a block,
// a part, a lining or an interfacing, or a measurement of the body. Whoever
// asked for the draft finds the place where it was written by it.
package subject

// Subject of a refusal.
type Subject int

// The options. Several blocks have some of them.
const (
	// Block is the block, part, lining or interfacing as a whole.
	Block Subject = iota

	Method
	Fit
	Dart
	Princess
	Yoke
	Back
	Front
	Extension
	NeckWider
	FrontNeckLower
	BackNeckLower
	BelowWaist
	StraightWaist
	BustEase
	WaistEase
	HipEase

	Style
	Reach
	HeadFullness
	HemFullness
	Length
	Ease
	HeadHeight
	BicepEase
	WristWidth

	Shape
	Vent
	Darts
	Flare
	Gores
	Tiers
	Fullness
	Pleats
	PanelWidth

	HemWidth
	Opening
	Elastic
	Pocket

	Width
	Depth
	Flat

	Kind
	Name
	Stand
	Overlap
	Of
	Edge
	Grain
	Joins

	Shorter
	BackPleat
	Reduce
	Cut

	afterOptions
)

// The measurements of the body, by their terms in ISO 8559-1.
const (
	Height Subject = afterOptions + 1 + iota
	BustGirth
	WaistGirth
	HipGirth
	NeckBaseGirth
	BackNeckPointToWaist
	ShoulderLength
	AcrossBackWidth
	AcrossFrontWidth
	ScyeDepth
	ShoulderToWrist
	UpperArmGirth
	WristGirth
	WaistToHip
	BodyRise
	InsideLegLength
	OutsideLegLength

	afterMeasurements
)

// Options lists every option.
func Options() []Subject { return span(Block+1, afterOptions) }

// Measurements lists every measurement.
func Measurements() []Subject { return span(Height, afterMeasurements) }

// IsMeasurement says that the subject is a measurement of the body.
func (s Subject) IsMeasurement() bool { return s > afterOptions && s < afterMeasurements }

func span(from, to Subject) []Subject {
	var out []Subject
	for s := from; s < to; s++ {
		out = append(out, s)
	}
	return out
}

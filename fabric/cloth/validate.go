package cloth

import "errors"

// What a cloth of any kind cannot have.
const (
	NoWidth            Defect = "no width"             // Length
	NegativeSelvedge   Defect = "negative selvedge"    // Length
	OnlySelvedges      Defect = "only selvedges"       // of Length each, of Other
	NegativeStep       Defect = "negative step"        // Length
	NegativeStraighten Defect = "negative straighten"  // Length
	NegativeHandLaying Defect = "negative hand laying" //
	NegativeSafety     Defect = "negative safety"      // or the shop's minimum
	UnknownNap         Defect = "unknown nap"          //
	NegativeGap        Defect = "negative gap"         // Length
	TiltOutside        Defect = "tilt outside"         // Share
	ShrinkageOutside   Defect = "shrinkage outside"    // Share
	RepeatTooFine      Defect = "repeat too fine"      // Length
	NegativeCentreLine Defect = "negative centre line" // Length
	NoStripes          Defect = "no stripes"           // to be centred on
)

// Check tells all that is wrong with the cloth, each a Fault; nil when nothing is:
//
//  1. its width is a positive length;
//  2. its selvedges are not negative and leave some width between them;
//  3. its step and the straightening of its ends are not negative;
//  4. its nap is one of the three;
//  5. the gap is not negative, the tilt no more than 5 %, the shrinkage no
//     more than 30 %, the repeat not negative;
//  6. its flaws have outlines that enclose something;
//  7. each rule that pieces keep finds what it needs.
func (c Cloth) Check() error {
	var faults []error
	for _, f := range c.Faults() {
		faults = append(faults, f)
	}
	return errors.Join(faults...)
}

// Faults are what Check tells.
func (c Cloth) Faults() []Fault {
	faults := append(c.measureFaults(), c.handlingFaults()...)
	for i := range faults {
		faults[i].Cloth = c.String()
	}
	return faults
}

// measureFaults is rules 1 to 4.
func (c Cloth) measureFaults() []Fault {
	var faults []Fault
	fault := func(of Defect, length float64) { faults = append(faults, Fault{Of: of, Length: length}) }
	switch {
	case !IsLength(c.Width) || c.Width == 0:
		fault(NoWidth, c.Width)
	case !IsLength(c.Selvedge):
		fault(NegativeSelvedge, c.Selvedge)
	case 2*c.Selvedge >= c.Width:
		faults = append(faults, Fault{Of: OnlySelvedges, Length: c.Selvedge, Other: c.Width})
	}
	if !IsLength(c.PurchaseStep) {
		fault(NegativeStep, c.PurchaseStep)
	}
	if !IsLength(c.Straighten) {
		fault(NegativeStraighten, c.Straighten)
	}
	if !IsLength(c.HandLaying.Share) || !IsLength(c.HandLaying.Length) {
		fault(NegativeHandLaying, 0)
	}
	if !IsLength(c.Safety.Share) || !IsLength(c.Safety.Length) || !IsLength(c.Minimum) {
		fault(NegativeSafety, 0)
	}
	if c.Nap < EitherWay || c.Nap > OneWayPerGarment {
		fault(UnknownNap, 0)
	}
	return faults
}

// handlingFaults is rules 5 to 7.
func (c Cloth) handlingFaults() []Fault {
	var faults []Fault
	fault := func(of Defect, length float64) { faults = append(faults, Fault{Of: of, Length: length}) }
	if !IsLength(c.Gap) {
		fault(NegativeGap, c.Gap)
	}
	if !(c.Tilt >= 0 && c.Tilt <= MostTilt) {
		faults = append(faults, Fault{Of: TiltOutside, Share: c.Tilt})
	}
	for _, share := range []float64{c.Shrinkage.Warp, c.Shrinkage.Weft} {
		if !(share >= 0 && share <= MostShrinkage) {
			faults = append(faults, Fault{Of: ShrinkageOutside, Share: share})
		}
	}
	for _, repeat := range []float64{c.Repeat.Along, c.Repeat.Across} {
		if !IsLength(repeat) || repeat > 0 && repeat < LeastRepeat {
			fault(RepeatTooFine, repeat)
		}
	}
	if !IsLength(c.Repeat.CentreLine) {
		fault(NegativeCentreLine, c.Repeat.CentreLine)
	}
	if len(c.Repeat.Centred) > 0 && c.Repeat.Across == 0 {
		fault(NoStripes, 0)
	}
	for _, rule := range c.rules() {
		faults = append(faults, rule.faults(c.Width, c.Repeat)...)
	}
	for _, flaw := range c.Flaws {
		faults = append(faults, flaw.faults()...)
	}
	return faults
}

// What a cloth can be at most, as shares; finer stripes match anywhere
// [source.OwnChoice].
const (
	MostTilt      = 0.05
	MostShrinkage = 0.3
	LeastRepeat   = 2.0 // mm
)

// String names the cloth in messages.
func (c Cloth) String() string {
	if c.Name == "" {
		return "cloth"
	}
	return "cloth " + c.Name
}

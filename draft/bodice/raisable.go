package bodice

// Raisable is how far the armhole can be raised before its underarm lies as high
// as in a close fit, in mm; less than 0 where it lies higher.
func (o Options) Raisable() float64 { return usualArmholeDrop(o.Fit) + o.ArmholeDrop }

package skirt

// Draft drafts the skirt. The error is a sentence that names the measurement
// or option that cannot be.
func Draft(m Measures, o Options) (Block, error) {
	f := reckon(m, o)
	if err := f.check(); err != nil {
		return Block{}, err
	}
	var block Block
	var err error
	switch o.Shape {
	case Straight, ALine:
		block, err = f.fitted()
	case Gored:
		block, err = f.gored()
	case Tiered:
		block, err = f.tiered()
	case KnifePleated, BoxPleated:
		block, err = f.pleated()
	default:
		block, err = f.circle()
	}
	if err != nil {
		return Block{}, err
	}
	block.WaistEase = f.WaistEase
	return block, nil
}

package org.glintery.colour;

/** A 3 x 3 matrix over columns of three. */
record Matrix3(
        double m00, double m01, double m02, double m10, double m11, double m12, double m20, double m21, double m22) {

    /** Makes the value type that the product stands for. */
    interface Three<T> {
        T of(double first, double second, double third);
    }

    static Matrix3 rows(
            double m00,
            double m01,
            double m02,
            double m10,
            double m11,
            double m12,
            double m20,
            double m21,
            double m22) {
        return new Matrix3(m00, m01, m02, m10, m11, m12, m20, m21, m22);
    }

    static Matrix3 diagonal(double first, double second, double third) {
        return new Matrix3(first, 0, 0, 0, second, 0, 0, 0, third);
    }

    <T> T times(double a, double b, double c, Three<T> result) {
        return result.of(m00 * a + m01 * b + m02 * c, m10 * a + m11 * b + m12 * c, m20 * a + m21 * b + m22 * c);
    }

    Matrix3 times(Matrix3 o) {
        return new Matrix3(
                m00 * o.m00 + m01 * o.m10 + m02 * o.m20,
                m00 * o.m01 + m01 * o.m11 + m02 * o.m21,
                m00 * o.m02 + m01 * o.m12 + m02 * o.m22,
                m10 * o.m00 + m11 * o.m10 + m12 * o.m20,
                m10 * o.m01 + m11 * o.m11 + m12 * o.m21,
                m10 * o.m02 + m11 * o.m12 + m12 * o.m22,
                m20 * o.m00 + m21 * o.m10 + m22 * o.m20,
                m20 * o.m01 + m21 * o.m11 + m22 * o.m21,
                m20 * o.m02 + m21 * o.m12 + m22 * o.m22);
    }

    /** Entry by entry between this (0) and the other (1). */
    Matrix3 towards(Matrix3 o, double share) {
        return new Matrix3(
                m00 + share * (o.m00 - m00),
                m01 + share * (o.m01 - m01),
                m02 + share * (o.m02 - m02),
                m10 + share * (o.m10 - m10),
                m11 + share * (o.m11 - m11),
                m12 + share * (o.m12 - m12),
                m20 + share * (o.m20 - m20),
                m21 + share * (o.m21 - m21),
                m22 + share * (o.m22 - m22));
    }

    /** By cofactors; for matrices that are known to have an inverse. */
    Matrix3 inverse() {
        double c00 = m11 * m22 - m12 * m21;
        double c01 = m12 * m20 - m10 * m22;
        double c02 = m10 * m21 - m11 * m20;
        double d = m00 * c00 + m01 * c01 + m02 * c02;
        return new Matrix3(
                c00 / d,
                (m02 * m21 - m01 * m22) / d,
                (m01 * m12 - m02 * m11) / d,
                c01 / d,
                (m00 * m22 - m02 * m20) / d,
                (m02 * m10 - m00 * m12) / d,
                c02 / d,
                (m01 * m20 - m00 * m21) / d,
                (m00 * m11 - m01 * m10) / d);
    }
}

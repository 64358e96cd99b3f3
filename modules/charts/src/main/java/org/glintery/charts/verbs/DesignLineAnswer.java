package org.glintery.charts.verbs;

import org.glintery.api.charts.LineNeed;
import org.glintery.api.verb.DrillAnswer;

/** A line of a design as verbs answer it. @param laid how many of the drills are laid */
record DesignLineAnswer(String symbol, DrillAnswer drill, String hex, long drills, long laid) {

    static DesignLineAnswer of(LineNeed need) {
        return new DesignLineAnswer(
                need.line().symbol(),
                DrillAnswer.of(need.line().drill()),
                need.line().hex(),
                need.drills(),
                need.laid());
    }
}
